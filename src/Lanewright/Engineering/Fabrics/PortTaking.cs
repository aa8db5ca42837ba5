using System.Collections.Immutable;
using Lanewright.Model.Devices;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Gives out the cages of one switch as plans do: in port order, minding cages lost to a neighbour, blocks that share a rate and
/// the ports silicon can have.</summary>
internal sealed class PortTaking(CageLayout layout)
{
    private const int Lost = -1;

    private readonly int[] ways = new int[layout.Slots.Length];
    private readonly BitRate[] rates = new BitRate[layout.Slots.Length];
    private readonly int[] opened = new int[layout.Ceilings.Length];

    /// <summary>Ports that could be opened on a fresh switch in one way.</summary>
    public static int Most(CageLayout layout, PortUse use) => new PortTaking(layout).Take(use, int.MaxValue).Length * use.Mode.Ways;

    /// <summary>Takes cages until the ports suffice, or as many as there are; their numbers as plans count them, from 1.</summary>
    public ImmutableArray<int> Take(PortUse use, int ports)
    {
        var taken = ImmutableArray.CreateBuilder<int>();
        for (var cage = 0; cage < ways.Length && (long)taken.Count * use.Mode.Ways < ports; cage++)
        {
            if (!CanOpen(cage, use)) continue;
            Open(cage, use);
            taken.Add(cage + 1);
        }
        return taken.ToImmutable();
    }

    private bool CanOpen(int cage, PortUse use)
    {
        var slot = layout.Slots[cage];
        if (!ReferenceEquals(slot.Cage, use.Cage) || ways[cage] != 0 || !IsRateFree(cage, slot, use.Mode.Rate)) return false;
        for (var i = 0; i < opened.Length; i++)
            if (IsUnder(layout.Ceilings[i], cage) && opened[i] + use.Mode.Ways > layout.Ceilings[i].Most) return false;
        if (!slot.Cage.NeighbourLost.Contains(use.Mode)) return true;
        var isOdd = layout.NumberInBank(cage) % 2 == 1;
        return isOdd && (IsLastOfRow(cage, slot) || ways[cage + 1] == 0);
    }

    private void Open(int cage, PortUse use)
    {
        var slot = layout.Slots[cage];
        ways[cage] = use.Mode.Ways;
        rates[cage] = use.Mode.Rate;
        if (slot.Cage.NeighbourLost.Contains(use.Mode) && !IsLastOfRow(cage, slot)) ways[cage + 1] = Lost;
        for (var i = 0; i < opened.Length; i++)
            if (IsUnder(layout.Ceilings[i], cage)) opened[i] += use.Mode.Ways;
    }

    private bool IsRateFree(int cage, CageSlot slot, BitRate rate)
    {
        var group = slot.Cage.RateGroup;
        if (group <= 1) return true;
        var first = slot.BankStart + ((cage - slot.BankStart) / group * group);
        var end = Math.Min(first + group, slot.BankStart + slot.BankCount);
        for (var other = first; other < end; other++)
            if (ways[other] > 0 && rates[other] != rate) return false;
        return true;
    }

    private static bool IsUnder(PortCeiling ceiling, int cage) => cage >= ceiling.Start && cage < ceiling.Start + ceiling.Count;

    private static bool IsLastOfRow(int cage, CageSlot slot) => cage + 1 >= slot.BankStart + slot.BankCount;
}
