using System.Collections.Immutable;
using Lanewright.Engineering.Heat;
using Lanewright.Model.Power;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Power;

/// <summary>What a load on feeds alike comes to in amperes, heat and air. It draws evenly from all feeds, and on three phases evenly from
/// each; what a rack really holds is uneven, and a plan tells that.</summary>
/// <param name="Load">What all feeds together carry.</param>
/// <param name="Feed">One of the feeds.</param>
/// <param name="Feeds">How many there are, 1 or more.</param>
/// <param name="PowerFactor">Above 0 and up to 1.</param>
/// <param name="BreakerShare">Share of a breaker that continuous load may take.</param>
public sealed record FeedAnswer(Watts Load, PowerFeed Feed, int Feeds, Known<double> PowerFactor, Known<double> BreakerShare)
{
    /// <summary>Height above the sea.</summary>
    public Length Altitude { get; init; }

    /// <summary>How much warmer the air leaves than it came.</summary>
    public required TemperatureRise Rise { get; init; }

    /// <summary>The limits of what is known.</summary>
    public required StandardsLibrary Standards { get; init; }

    /// <summary>The current of a phase of one feed with all feeds up.</summary>
    public Amperes Normal => Current(Feeds);

    /// <summary>The same with one feed lost; null where there is but one.</summary>
    public Amperes? AfterLoss => Feeds > 1 ? Current(Feeds - 1) : null;

    /// <summary>The most continuous current of the breaker.</summary>
    public Amperes Limit => BreakerRule.Most(Feed.Breaker, BreakerShare.Value, Feed.IsFullRated);

    /// <summary>The smallest rating that carries the load when a feed is lost.</summary>
    public Amperes LeastBreaker =>
        BreakerRule.Least(AfterLoss ?? Normal, Amperes.From(0), Feed.IsFullRated ? 1 : BreakerShare.Value);

    /// <summary>Whether the breaker carries it, also with one feed lost.</summary>
    public bool Bears => !Rounding.IsAbove((AfterLoss ?? Normal).Value, Limit.Value);

    /// <summary>Cubic metres an hour that carry the heat away at that height.</summary>
    public double Air => Stream.CubicMetresAnHour(Load, Rise, Stream.Density(Altitude));

    /// <summary>Kilograms a cubic metre of that air.</summary>
    public double Density => Stream.Density(Altitude);

    private AirStream Stream => new(Standards);

    private Amperes Current(int feeds)
    {
        var section = Load.Value / feeds / Feed.Phases;
        ImmutableArray<double> sections = [.. Enumerable.Repeat(section, Feed.Phases)];
        return PhaseCurrents.Of(sections, Feed, PowerFactor.Value).Max();
    }
}
