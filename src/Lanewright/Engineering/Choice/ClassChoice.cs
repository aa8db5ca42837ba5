using System.Collections.Immutable;
using Lanewright.Engineering.Links;

namespace Lanewright.Engineering.Choice;

/// <summary>What was found for a class of links.</summary>
/// <param name="Class">The class.</param>
/// <param name="Candidates">Every way, best first.</param>
/// <param name="Shares">How its links are made; empty when no way could be found at all.</param>
public sealed record ClassChoice(LinkClass Class, ImmutableArray<Solution> Candidates, ImmutableArray<ChosenShare> Shares)
{
    /// <summary>The way most of its links are made, or null.</summary>
    public Solution? Chosen => Shares.IsEmpty ? null : Shares[0].Solution;

    /// <summary>The share of the way most of its links are made, or null.</summary>
    public ChosenShare? Winner => Shares.IsEmpty ? null : Shares[0];

    /// <summary>What the class comes to.</summary>
    public Verdict Verdict { get; } = Shares.IsEmpty ? Verdict.Fail : Shares.Max(s => s.Solution.Verdict);

    /// <summary>Whether the plan names what to use, so that its failing is the plan's own and not a lack of candidates.</summary>
    public bool IsNamed
    {
        get
        {
            var s = Class.Statement;
            return s.Type is not null || s.CopperType is not null || s.Assembly is not null || s.Cord is not null
                || s.From.Module is not null || s.To.Module is not null || s.Media.Length == 1 || Candidates.Length == 1;
        }
    }
}
