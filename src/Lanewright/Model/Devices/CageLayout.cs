using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Model.Devices;

/// <summary>All cages of a kind of device with its cards, in port order.</summary>
/// <param name="Slots">The cages.</param>
/// <param name="Ceilings">How many logical ports stretches of them may have.</param>
public sealed record CageLayout(ImmutableArray<CageSlot> Slots, ImmutableArray<PortCeiling> Ceilings)
{
    /// <summary>The cage's number in its row, from 1.</summary>
    public int NumberInBank(int cage) => cage - Slots[cage].BankStart + 1;

    /// <summary>Lays out a device and the cards in its slots.</summary>
    public static CageLayout Of(DeviceModel model, ImmutableArray<CardModel> cards)
    {
        var slots = ImmutableArray.CreateBuilder<CageSlot>();
        var ceilings = ImmutableArray.CreateBuilder<PortCeiling>();
        AddBanks(slots, model.Banks, "");
        if (model.PortCeiling is { } own) ceilings.Add(new PortCeiling(0, slots.Count, own));
        for (var i = 0; i < cards.Length; i++)
        {
            var start = slots.Count;
            AddBanks(slots, cards[i].Banks, Numerals.Whole(i + 1) + "/");
            if (cards[i].PortCeiling is { } most) ceilings.Add(new PortCeiling(start, slots.Count - start, most));
        }
        return new CageLayout(slots.ToImmutable(), ceilings.ToImmutable());
    }

    private static void AddBanks(ImmutableArray<CageSlot>.Builder slots, ImmutableArray<CageBank> banks, string prefix)
    {
        var number = 0;
        foreach (var bank in banks)
        {
            var start = slots.Count;
            for (var i = 0; i < bank.Count; i++)
                slots.Add(new CageSlot(bank.Cage, start, bank.Count, prefix + Numerals.Whole(++number)));
        }
    }
}
