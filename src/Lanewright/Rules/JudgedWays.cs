using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules;

/// <summary>The ways of links that rules judge, and what is to be said of them; looked up once, when a rule first asks.</summary>
internal sealed class JudgedWays
{
    private readonly Lazy<ImmutableArray<(ClassChoice Choice, Solution Solution)>> all;
    private readonly Lazy<ILookup<string, (ClassChoice Choice, Solution Solution, Check Check)>> spoken;

    /// <summary>Looks at how the links of a plan are made.</summary>
    public JudgedWays(LinkDesign design)
    {
        all = new(() =>
        [
            .. from choice in design.Choices
               where choice.Chosen is not null && (choice.Verdict != Verdict.Fail || choice.IsNamed)
               from share in choice.Shares
               select (choice, share.Solution),
        ]);
        spoken = new(() => all.Value
            .SelectMany(j => SameCause.Spoken(j.Solution.Checks).Select(c => (j.Choice, j.Solution, Check: c)))
            .ToLookup(s => s.Check.Name, StringComparer.Ordinal));
    }

    /// <summary>The classes that have a way to be made, with each way links of them are made.</summary>
    public ImmutableArray<(ClassChoice Choice, Solution Solution)> All => all.Value;

    /// <summary>The comparisons of one name to speak of, of all ways, in their order.</summary>
    public IEnumerable<(ClassChoice Choice, Solution Solution, Check Check)> SpokenOf(string checkName) => spoken.Value[checkName];
}
