using System.Collections.Immutable;
using Lanewright.Standards;

namespace Lanewright.Engineering.Links;

/// <summary>Whether two optical interface types send and understand the same light. Names do not matter, lanes do.</summary>
public static class MediaMatch
{
    /// <summary>The comparisons between two types of one rate.</summary>
    public static ImmutableArray<Check> Of(InterfaceType from, InterfaceType to)
    {
        if (from.Name == to.Name) return [Check.Of(CheckNames.FibreKind, true, from.Definition)];
        return
        [
            Check.Of(CheckNames.FibreKind, from.FibreKind == to.FibreKind, to.Definition,
                Differs(from, to, Glass(from), Glass(to))),
            Check.Of(CheckNames.MediaLanes, from.MediaLanes == to.MediaLanes, to.Definition,
                Differs(from, to, Lanes(from), Lanes(to))),
            Check.Of(CheckNames.LaneBaud, from.Signal.Baud == to.Signal.Baud, to.Baud?.Source ?? to.Definition,
                Differs(from, to, $"{from.Signal.Baud}", $"{to.Signal.Baud}")),
            Check.Of(CheckNames.LaneModulation, from.Signal.Modulation == to.Signal.Modulation, to.Definition,
                Differs(from, to, LaneSignal.Name(from.Signal.Modulation), LaneSignal.Name(to.Signal.Modulation))),
            Check.Of(CheckNames.WavelengthPlan, SameWavelengths(from, to), to.Sheet["wavelengths"]?.Source ?? to.Definition,
                Differs(from, to, Colours(from), Colours(to))),
        ];
    }

    /// <summary>Whether each lane of one type lies where the other looks for it, on as many fibres.</summary>
    private static bool SameWavelengths(InterfaceType from, InterfaceType to)
    {
        if (from.WavelengthsPerFibre != to.WavelengthsPerFibre || from.IsBidirectional != to.IsBidirectional) return false;
        if (from.Lanes.IsEmpty || from.Lanes.Length != to.Lanes.Length) return false;
        return from.Lanes.Zip(to.Lanes).All(pair => pair.First.Overlaps(pair.Second));
    }

    private static string Differs(InterfaceType from, InterfaceType to, string left, string right) =>
        left == right ? "" : $"{from.Name} has {left}, {to.Name} has {right}";

    private static string Glass(InterfaceType type) => type.FibreKind == FibreKind.MultiMode ? "multimode fibre" : "single-mode fibre";

    private static string Lanes(InterfaceType type) => type.MediaLanes == 1 ? "1 lane" : $"{type.MediaLanes} lanes";

    private static string Colours(InterfaceType type) => type.Lanes.IsEmpty
        ? type.Sheet.Word("band")
        : string.Join(" | ", type.Lanes) + (type.WavelengthsPerFibre > 1 ? " on one fibre" : "");
}
