using Lanewright.Model;
using Lanewright.Model.Places;
using Lanewright.Model.Plant;

namespace Lanewright.Engineering.Cabling;

/// <summary>Whether cables pass a third hall on their way from a hall to another. Where none does, and no pathway is described, there is
/// one way between two halls, which needs no search.</summary>
internal static class ThirdHalls
{
    /// <summary>Whether the shortest way of anything laid in a plan leads along more than one route.</summary>
    public static bool ArePassed(Plan plan)
    {
        var building = plan.Building;
        if (building.Routes.Length < 2) return false;
        var mayPass = new Dictionary<(int, int), bool>();
        foreach (var (one, other) in Laid(plan).Distinct())
        {
            if (one < 0 || other < 0) continue;
            var (from, to) = (building.Racks[Math.Min(one, other)], building.Racks[Math.Max(one, other)]);
            if (from.Hall == to.Hall) continue;
            var halls = (from.Hall.Index, to.Hall.Index);
            if (!mayPass.TryGetValue(halls, out var may)) mayPass[halls] = may = MayPass(building, from.Hall, to.Hall);
            if (may && HallChain.Between(building, from, to) is { Routes.Length: > 1 }) return true;
        }
        return false;
    }

    private static bool MayPass(Building building, Hall from, Hall to) =>
        building.AreJoined(from, to, r => !Building.Joins(r, from, to));

    /// <summary>The racks that cables, cords and trunks join. What a set of links or a line ends in and passes is little, so that any two
    /// of it count.</summary>
    private static IEnumerable<(int One, int Other)> Laid(Plan plan)
    {
        for (var link = 0; link < plan.Links.Count; link++)
        {
            var through = plan.Statements[plan.Links.Statement(link)].Through;
            if (through.IsEmpty) yield return (Rack(plan.Links.FromDevice(link)), Rack(plan.Links.ToDevice(link)));
            foreach (var panel in through.SelectMany(Ends))
            {
                yield return (Rack(plan.Links.FromDevice(link)), Rack(panel));
                yield return (Rack(panel), Rack(plan.Links.ToDevice(link)));
            }
        }
        foreach (var statement in plan.Statements)
            foreach (var pair in Pairs(statement.Through.SelectMany(Ends))) yield return pair;
        foreach (var trunk in plan.Trunks) yield return (Rack(trunk.From), Rack(trunk.To));
        foreach (var line in plan.Lines)
        {
            var ports = plan.LinePorts.Where(p => p.Line == line.Index).ToList();
            foreach (var pair in Pairs([.. ports.Select(p => p.FromDevice), .. line.FromShelves, .. line.FromPanels])) yield return pair;
            foreach (var pair in Pairs([.. ports.Select(p => p.ToDevice), .. line.ToShelves, .. line.ToPanels])) yield return pair;
        }

        int Rack(int device) => device < 0 ? -1 : plan.Devices.RackIndex(device);

        IEnumerable<(int One, int Other)> Pairs(IEnumerable<int> devices)
        {
            var racks = devices.Select(Rack).Distinct().ToList();
            return racks.SelectMany(one => racks, (one, other) => (one, other));
        }
    }

    private static IEnumerable<int> Ends(TrunkGroup trunk) => [trunk.From, trunk.To];
}
