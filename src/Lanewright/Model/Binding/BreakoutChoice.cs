using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;
using Lanewright.Model.Links;

namespace Lanewright.Model.Binding;

/// <summary>Decides how cages are split where a plan leaves it open: not at all if the cages suffice, else as little as will
/// do.</summary>
internal static class BreakoutChoice
{
    /// <summary>The mode, and whether the platforms list it.</summary>
    /// <param name="statement">The statement.</param>
    /// <param name="end">Its side.</param>
    /// <param name="linksOf">Links each device needs here, by device.</param>
    /// <param name="hasFreeCages">Whether so many cages of a device could still run in a mode.</param>
    public static (PortMode Mode, bool IsListed) Of(
        LinkStatement statement, LinkEnd end, IReadOnlyDictionary<int, int> linksOf, Func<int, PortMode, int, bool> hasFreeCages)
    {
        if (end.Ways is { } ways)
        {
            var fixedMode = new PortMode(ways, statement.Rate);
            return (fixedMode, end.Groups.Any(g => Lists(g, fixedMode)));
        }
        PortMode? largest = null;
        foreach (var mode in ListedModes(end, statement.Rate))
        {
            largest = mode;
            if (linksOf.All(d => hasFreeCages(d.Key, mode, (d.Value + mode.Ways - 1) / mode.Ways))) return (mode, true);
        }
        return largest is { } best ? (best, true) : (new PortMode(1, statement.Rate), false);
    }

    private static IEnumerable<PortMode> ListedModes(LinkEnd end, Quantities.BitRate rate) =>
        end.Groups
            .SelectMany(g => g.Layout.Slots.Select(s => s.Cage).Distinct())
            .SelectMany(c => c.Modes)
            .Where(m => m.Rate == rate)
            .Distinct()
            .OrderBy(m => m.Ways);

    private static bool Lists(DeviceGroup group, PortMode mode) => group.Layout.Slots.Any(s => s.Cage.Modes.Contains(mode));
}
