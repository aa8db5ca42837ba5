using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Plant;

namespace Lanewright.Engineering.Plant;

/// <summary>Gives out ports of trunks, the first free one to each that asks, trunk after trunk; and tells which place of a panel each
/// trunk's end has.</summary>
internal sealed class PortLedger
{
    private readonly ImmutableArray<TrunkInside> insides;
    private readonly Dictionary<(int Trunk, bool IsFar), int> slots = [];
    private readonly Dictionary<(int Cable, int Trunk), int> shared = [];
    private readonly int[] taken;

    /// <summary>All ports of a plan's trunks are free. Ends take the places of a panel in the order of the trunks.</summary>
    public PortLedger(Plan plan, ImmutableArray<TrunkInside> insides)
    {
        this.insides = insides;
        taken = new int[plan.Trunks.Length];
        var next = new Dictionary<int, int>();
        foreach (var trunk in plan.Trunks)
        {
            foreach (var (panel, isFar) in new[] { (trunk.From, false), (trunk.To, true) })
            {
                slots[(trunk.Index, isFar)] = next.GetValueOrDefault(panel) + 1;
                next[panel] = next.GetValueOrDefault(panel) + trunk.Count;
            }
        }
    }

    /// <summary>Ports of a group that were given out.</summary>
    public int TakenOf(TrunkGroup trunk) => taken[trunk.Index];

    /// <summary>The first place in a panel of a group's ends.</summary>
    public int SlotOf(TrunkGroup trunk, bool isFar) => slots[(trunk.Index, isFar)];

    /// <summary>A port of each group on a link's way. What links of one cable share is given out once.</summary>
    /// <param name="solution">How the link is made.</param>
    /// <param name="cable">Its cable.</param>
    /// <param name="part">Which port of a split cage it is, from 1.</param>
    public ImmutableArray<TrunkPatch> Take(Solution solution, int cable, int part)
    {
        if (solution.Through is not { } way || solution.Patching.IsEmpty) return [];
        var patches = ImmutableArray.CreateBuilder<TrunkPatch>(way.Legs.Length);
        for (var i = 0; i < way.Legs.Length; i++)
        {
            var leg = way.Legs[i];
            var isShared = solution.Patching[i].IsWhole || solution.Patching[i + 1].IsWhole;
            patches.Add(Patch(leg, isShared ? Shared(cable, leg.Trunk) : taken[leg.Trunk.Index]++, part));
        }
        return patches.ToImmutable();
    }

    /// <summary>The nth port of a group, as a link meets it.</summary>
    public TrunkPatch Patch(TrunkLeg leg, int nth, int part) => TrunkPatch.Of(
        leg, insides[leg.Trunk.Index], nth, part, slots[(leg.Trunk.Index, false)], slots[(leg.Trunk.Index, true)]);

    private int Shared(int cable, TrunkGroup trunk)
    {
        if (!shared.TryGetValue((cable, trunk.Index), out var nth)) shared[(cable, trunk.Index)] = nth = taken[trunk.Index]++;
        return nth;
    }
}
