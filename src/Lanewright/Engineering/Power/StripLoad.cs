using System.Collections.Immutable;
using Lanewright.Model.Places;
using Lanewright.Model.Power;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Power;

/// <summary>What the strip of a feed in one rack carries when everything draws its most.</summary>
/// <param name="Rack">The rack.</param>
/// <param name="Feed">The feed.</param>
/// <param name="Limit">The most continuous current of each phase.</param>
/// <param name="Phases">Current of each phase while all feeds are up.</param>
/// <param name="AfterLoss">Highest current of a phase when the worst other feed of the rack is lost.</param>
/// <param name="Lost">That feed; null when there is no other.</param>
public sealed record StripLoad(
    Rack Rack, PowerFeed Feed, Amperes Limit, ImmutableArray<Amperes> Phases, Amperes AfterLoss, PowerFeed? Lost)
{
    /// <summary>What is plugged into it, the largest first.</summary>
    public required ImmutableArray<StripPlug> Plugs { get; init; }

    /// <summary>Whether no other order of outlets has a fullest phase that carries less.</summary>
    public required bool IsBestOrder { get; init; }

    /// <summary>Current of the fullest phase while all feeds are up.</summary>
    public Amperes Highest => Phases.Max();

    /// <summary>How far the fullest phase lies above the mean of all.</summary>
    public Share Unbalance
    {
        get
        {
            var mean = Phases.Average(p => p.Value);
            return mean > 0 ? Share.From((Highest.Value / mean) - 1) : default;
        }
    }
}
