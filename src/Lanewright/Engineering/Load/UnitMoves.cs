using System.Collections.Immutable;
using Lanewright.Engineering.Load.Symmetry;

namespace Lanewright.Engineering.Load;

/// <summary>How symmetries move things that may fail onto each other. Every thing and every cable it takes down has a vertex of its own, so
/// that a symmetry moves a link together with the module and the tray it fails with.</summary>
internal static class UnitMoves
{
    /// <summary>Where each symmetry found sends units, those it moves.</summary>
    public static ImmutableArray<IReadOnlyDictionary<int, int>> Of(
        FabricGraph graph, TrafficMatrix traffic, ImmutableArray<FailureUnit> units)
    {
        var coloured = ColouredGraph.CableByCable(graph, traffic, units);
        var unitOf = new Dictionary<int, int>();
        for (var unit = 0; unit < units.Length; unit++) unitOf[coloured.UnitVertices[unit]] = unit;
        return
        [
            .. new Orbits(coloured, graph).Generators.Select(move => (IReadOnlyDictionary<int, int>)move.Vertices
                .Where(v => unitOf.ContainsKey(v.From))
                .ToDictionary(v => unitOf[v.From], v => unitOf[v.To])),
        ];
    }
}
