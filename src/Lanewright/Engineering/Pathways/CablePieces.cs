using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Pathways;

/// <summary>All that is laid between racks: cables, the cords at both ends of trunks, and trunks.</summary>
internal static class CablePieces
{
    /// <summary>The pieces in the order of the cables, then trunks.</summary>
    public static ImmutableArray<CablePiece> Of(Plan plan, LinkDesign design, WayNet net)
    {
        var pieces = ImmutableArray.CreateBuilder<CablePiece>(design.Cables.Length);
        foreach (var run in design.Cables)
        {
            var link = run.FirstLink;
            if (design.SolutionOf(link) is not { } solution) continue;
            var statement = plan.Statements[plan.Links.Statement(link)];
            var (from, to) = (plan.Links.FromDevice(link), plan.Links.ToDevice(link));
            var (side, isFixed) = (net.SideOf(statement.Side), statement.IsExisting);
            var nearEnd = solution.Through?.NearPanel ?? to;
            Add(new CableKey(CableKind.Cable, link), from, nearEnd, solution.Cable, side, isFixed);
            if (solution is { Through: { } way, FarCord: { } cord })
                Add(new CableKey(CableKind.FarCord, link), way.FarPanel, to, cord, side, isFixed);
        }
        foreach (var trunk in plan.Trunks)
            for (var number = 0; number < trunk.Count; number++)
                Add(new CableKey(CableKind.Trunk, trunk.Index, number), trunk.From, trunk.To, trunk.Cable, 0, trunk.IsExisting);
        return pieces.ToImmutable();

        void Add(CableKey key, int from, int to, CableItem item, int side, bool isFixed)
        {
            var (a, b) = (plan.Devices.RackIndex(from), plan.Devices.RackIndex(to));
            if (a >= 0 && b >= 0 && a != b)
                pieces.Add(new CablePiece(key, from, to, WayQuestion.Between(a, b, Math.Max(side, 0)), item, isFixed));
        }
    }
}
