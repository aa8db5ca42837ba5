using System.Collections.Immutable;
using Lanewright.Engineering;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Cost;
using Lanewright.Engineering.Fabrics;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Load;
using Lanewright.Findings;
using Lanewright.Model;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Rules;

/// <summary>What rules judge, and where they put what they find.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Design">How its links are made.</param>
/// <param name="Parts">What it needs.</param>
/// <param name="Load">What its networks carry.</param>
/// <param name="Books">What is worked out of it when first asked for.</param>
/// <param name="Glance">What rules out each shape of the fabric that the plan wants; null where it wants none, where one can be had and
/// where a short look cannot tell.</param>
/// <param name="Findings">Where findings go.</param>
public sealed record Judgement(
    Plan Plan, LinkDesign Design, ImmutableArray<PartLine> Parts, LoadStudy Load, PlanBooks Books, Lazy<ImmutableArray<ShapeLost>?> Glance,
    FindingSink Findings) : WorkedPlan(Plan, Design, Parts, Load, Books)
{
    /// <summary>Other sets of links named with a finding.</summary>
    private const int MostRelated = 5;

    private readonly JudgedWays ways = new(Design);

    /// <summary>Whether reading and binding found no error. What a network is and carries can only be judged of a
    /// plan that is whole.</summary>
    public bool IsWhole { get; } = Findings.ErrorCount == 0;

    /// <summary>The classes that have a way to be made, with each way links of them are made. Where the plan leaves the way
    /// open and none passes, the class is left to the rule that says so.</summary>
    public ImmutableArray<(ClassChoice Choice, Solution Solution)> Judged => ways.All;

    /// <summary>The comparisons of one name to speak of, of all that is judged, in its order.</summary>
    public IEnumerable<(ClassChoice Choice, Solution Solution, Check Check)> SpokenOf(string checkName) => ways.SpokenOf(checkName);

    /// <summary>Adds a finding about a class of links, or about several of which it is the worst.</summary>
    public void Add(Rule rule, ClassChoice choice, string message, Check? check = null, long? links = null)
    {
        var example = ExampleOf(choice.Class, links ?? choice.Class.Count);
        Findings.Add(new Finding(rule.Kind, rule.Kind.Severity, choice.Class.Statement.Span, $"{example}: {message}")
        {
            Subject = choice.Class.SetNames,
            Count = links ?? choice.Class.Count,
            Related =
            [
                .. choice.Class.Statements.Skip(1).Take(MostRelated)
                    .Select(s => new RelatedPlace(s.Span, $"'{s.Name}' has links alike")),
            ],
            Evidence = check is null ? null : new Evidence(check.Name, check.Value, check.Limit, check.Unit, check.Source)
            {
                Holds = check is { Unit: "", Verdict: not Verdict.Unproven } ? check.Verdict == Verdict.Pass : null,
            },
        });
    }

    /// <summary>Adds a finding about traffic in a network, with what it rests on.</summary>
    public void Add(Rule rule, SourceSpan span, string message, string subject, long count, Severity severity, Evidence? evidence = null) =>
        Findings.Add(new Finding(rule.Kind, severity, span, message) { Subject = subject, Count = count, Evidence = evidence });

    /// <summary>Adds a finding about the plan or a place in it.</summary>
    public void Add(Rule rule, SourceSpan span, string message, string subject = "", long count = 1) =>
        Findings.Add(new Finding(rule.Kind, rule.Kind.Severity, span, message) { Subject = subject, Count = count });

    /// <summary>A link of the class by its ends, and how many more there are.</summary>
    private string ExampleOf(LinkClass link, long count)
    {
        var from = PortName(Plan.Links.FromDevice(link.FirstLink), Plan.Links.FromPort(link.FirstLink).Cage);
        var to = PortName(Plan.Links.ToDevice(link.FirstLink), Plan.Links.ToPort(link.FirstLink).Cage);
        var more = count > 1 ? $" and {Numerals.Whole(count - 1)} more" : "";
        return $"{from} to {to}{more}";
    }

    private string PortName(int device, int cage) =>
        Plan.Devices.Name(device) + ":" + Plan.Devices.Group(device).Layout.Slots[cage].Label;
}
