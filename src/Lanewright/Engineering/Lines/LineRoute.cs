using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model.Lines;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>A line of a plan over one way.</summary>
/// <param name="Spans">The spans in order.</param>
/// <param name="Sites">The sites it comes by, ends and all.</param>
/// <param name="Answer">How it is built there.</param>
/// <param name="Availability">Share of time in which no fibre of it is cut.</param>
/// <param name="Terminals">The modules at its ends.</param>
public sealed record LineRoute(
    ImmutableArray<FibreSpan> Spans, ImmutableArray<Site> Sites, LineAnswer Answer, Share Availability, LineTerminals Terminals)
{
    /// <summary>The worse of what the line and the cages of its modules come to.</summary>
    public Verdict Verdict =>
        Checks.Verdict(Terminals.Checks) is var ofCages && ofCages > Answer.Design.Verdict ? ofCages : Answer.Design.Verdict;

    /// <summary>Whether it counts for what is left and how often: a route that fails does not.</summary>
    public bool Carries => Verdict != Verdict.Fail;

    /// <summary>Whether it leads over a span.</summary>
    public bool Crosses(FibreSpan span) => Spans.Contains(span);

    /// <summary>Whether any of its spans lies in a duct.</summary>
    public bool LiesIn(string duct) => Spans.Any(s => s.Ducts.Contains(duct));

    /// <summary>How long it is.</summary>
    public Length Length => Answer.Question.Length;

    /// <summary>The spans by name.</summary>
    public string Name => string.Join(", ", Spans.Select(s => s.Name));

    /// <summary>The spans by name, of many the first and the last.</summary>
    public string ShortName => Spans.Length <= MostNamed ? Name : $"{Spans.Length} spans from {Spans[0].Name} to {Spans[^1].Name}";

    private const int MostNamed = 10;
}
