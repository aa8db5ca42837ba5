using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model.Lines;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>A line of a plan with its routes, and what happens when fibre is cut.</summary>
public sealed record LineResult
{
    /// <summary>What the plan says.</summary>
    public required LineStatement Statement { get; init; }

    /// <summary>The routes; fewer than wanted where there are no more.</summary>
    public required ImmutableArray<LineRoute> Routes { get; init; }

    /// <summary>Spans, and ducts, that every way between the ends needs: why there is no second route. Empty where single ones prove
    /// nothing.</summary>
    public ImmutableArray<string> Separating { get; init; } = [];

    /// <summary>Where there is no second route and no single span or duct proves it: every two ways, with what both are in. Empty where
    /// there are more ways than can be told.</summary>
    public ImmutableArray<LineConflict> Conflicts { get; init; } = [];

    /// <summary>Whether the search for a pair of routes went to its end.</summary>
    public bool IsProven { get; init; } = true;

    /// <summary>Ducts and spans that both routes are in.</summary>
    public ImmutableArray<string> Shared { get; init; } = [];

    /// <summary>What is left after each cut of a span or a duct that it uses, least first.</summary>
    public ImmutableArray<LineCut> Cuts { get; init; } = [];

    /// <summary>What it carries whole: a route that fails carries nothing.</summary>
    public BitRate Capacity => Statement.Rate * (Statement.Channels * Routes.Count(r => r.Carries));

    /// <summary>The worst verdict of its routes; fail where the plan wants more routes, routes that share nothing, more of the time than
    /// they give, or less delay.</summary>
    public Verdict Verdict => Routes.Length < Statement.Routes || Routes.IsEmpty || !Shared.IsEmpty
        || (Statement.AvailabilityLeast is { } least && Availability < least)
        || (Statement.LatencyMost is { } most && Routes.Any(r => r.Answer.Design.Latency is { } delay && delay.Value > most))
        || (Statement.DifferenceMost is { } apart && Difference > apart)
            ? Verdict.Fail
            : Routes.Max(r => r.Verdict);

    /// <summary>Share of time in which it carries something: no route or one, or either of two, behind the sites that all need.</summary>
    public Share Availability => Uptime.All;

    /// <summary>What that share is made of.</summary>
    public required LineUptime Uptime { get; init; }

    /// <summary>Difference of delay between its two routes; null with fewer.</summary>
    public Duration? Difference => Routes is [{ Answer.Design.Latency: { } first }, { Answer.Design.Latency: { } second }]
        ? Duration.FromNanoseconds(Math.Abs((first.Value - second.Value).Nanoseconds))
        : null;
}
