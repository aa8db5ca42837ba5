using System.Collections.Immutable;
using Lanewright.Model;
using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Plant;

/// <summary>What the fronts of panels show: cassettes and arrays in their places, ports in use and free.</summary>
public sealed class PanelFronts
{
    private readonly Dictionary<int, PanelPlace[]> fronts = [];
    private readonly HashSet<int> shared;

    private PanelFronts(Plan plan, PlantBook book)
    {
        var used = Used(plan, book);
        // What lines put into their shelves and panels is told by their own drawings; shown here these would look free.
        var ends = plan.Trunks.SelectMany(t => (int[])[t.From, t.To]).ToHashSet();
        var ofLines = plan.Lines.SelectMany(l => (int[])[.. l.FromShelves, .. l.ToShelves, .. l.FromPanels, .. l.ToPanels]).ToHashSet();
        shared = [.. ofLines.Where(ends.Contains)];
        ofLines.ExceptWith(ends);
        foreach (var group in plan.Devices.Groups.Where(g => g.Model.Kind == DeviceKind.Panel))
        {
            for (var panel = group.First; panel < group.First + group.Count; panel++)
            {
                if (ofLines.Contains(panel)) continue;
                Panels.Add(panel);
                fronts[panel] = [.. Enumerable.Range(1, group.Model.Slots).Select(s => new PanelPlace(s, null, 0, 0, [], IsOpen: false))];
            }
        }
        foreach (var trunk in plan.Trunks)
        {
            foreach (var isFar in new[] { false, true })
            {
                var (panel, first) = (isFar ? trunk.To : trunk.From, book.SlotOf(trunk, isFar));
                var isOpen = trunk.CassetteAt(isFar) is null;
                // Ends beyond the last place hang behind the panel; another rule says so.
                for (var n = 0; n < trunk.Count && first + n <= fronts[panel].Length; n++)
                {
                    var ports = used.GetValueOrDefault((panel, first + n)) ?? [];
                    fronts[panel][first + n - 1] =
                        new PanelPlace(first + n, trunk, n + 1, isOpen ? 1 : trunk.Fibres / 2, [.. ports.Where(p => p > 0)], isOpen);
                }
            }
        }
    }

    /// <summary>The panels, in the order of the devices.</summary>
    public List<int> Panels { get; } = [];

    /// <summary>The fronts of a plan's panels.</summary>
    public static PanelFronts Of(Plan plan, PlantBook book) => new(plan, book);

    /// <summary>The places of a panel, from the first; empty for any other device.</summary>
    public IReadOnlyList<PanelPlace> Of(int panel) => fronts.GetValueOrDefault(panel) ?? [];

    /// <summary>Whether lines between sites end in a panel besides trunks: in which of its places the plan does not say, so that none of
    /// those without a trunk is surely free.</summary>
    public bool HasLines(int panel) => shared.Contains(panel);

    private static Dictionary<(int Panel, int Slot), SortedSet<int>> Used(Plan plan, PlantBook book)
    {
        var used = new Dictionary<(int, int), SortedSet<int>>();
        for (var link = 0; link < plan.Links.Count && !plan.Trunks.IsEmpty; link++)
        {
            foreach (var patch in book.PatchesOf(link))
            {
                Add((patch.NearPanel, patch.NearSlot), patch.NearPort);
                Add((patch.FarPanel, patch.FarSlot), patch.FarPort);
            }
        }
        return used;

        void Add((int, int) place, int port)
        {
            if (!used.TryGetValue(place, out var ports)) used[place] = ports = [];
            ports.Add(port);
        }
    }
}
