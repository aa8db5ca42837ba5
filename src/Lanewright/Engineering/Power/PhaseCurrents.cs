using System.Collections.Immutable;
using Lanewright.Model.Power;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Power;

/// <summary>Currents of the phases of a feed.</summary>
public static class PhaseCurrents
{
    /// <summary>The current of each phase.</summary>
    /// <param name="sections">Watts drawn of each section: of a phase and neutral, or between a phase and the next one.</param>
    /// <param name="feed">The feed.</param>
    /// <param name="powerFactor">Above 0 and up to 1.</param>
    public static ImmutableArray<Amperes> Of(IReadOnlyCollection<double> sections, PowerFeed feed, double powerFactor)
    {
        var currents = sections.Select(s => OfOutlet(Watts.From(s), feed, powerFactor)).ToImmutableArray();
        if (feed.Phases == 1 || !feed.IsPhaseToPhase) return currents;
        // Section i lies between phase i and the next one.
        return
        [
            .. Enumerable.Range(0, currents.Length)
                .Select(i => ThreePhase.OfPhase(currents[i], currents[(i + currents.Length - 1) % currents.Length])),
        ];
    }

    /// <summary>The current that a load draws from an outlet.</summary>
    /// <param name="drawn">The load.</param>
    /// <param name="feed">The feed.</param>
    /// <param name="powerFactor">Above 0 and up to 1.</param>
    public static Amperes OfOutlet(Watts drawn, PowerFeed feed, double powerFactor) => ThreePhase.Between(
        drawn, feed.Phases > 1 && !feed.IsPhaseToPhase ? ThreePhase.ToNeutral(feed.Volts) : feed.Volts, powerFactor);

    /// <summary>What a section is called on a strip: 'L1', or 'L1-L2' between two phases; nothing where there is one phase.</summary>
    public static string NameOf(int section, PowerFeed feed) => feed.Phases == 1
        ? ""
        : feed.IsPhaseToPhase
            ? $"L{Numerals.Whole(section + 1)}-L{Numerals.Whole(((section + 1) % feed.Phases) + 1)}"
            : $"L{Numerals.Whole(section + 1)}";
}
