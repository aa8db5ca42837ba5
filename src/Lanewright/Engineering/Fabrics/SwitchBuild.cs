using System.Collections.Immutable;
using Lanewright.Engineering.Space;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;

namespace Lanewright.Engineering.Fabrics;

/// <summary>A switch as it would be bought: a box, or a chassis with cards.</summary>
internal sealed class SwitchBuild
{
    public SwitchBuild(DeviceModel model, ImmutableArray<CardModel> cards)
    {
        Model = model;
        Cards = cards;
        Layout = CageLayout.Of(model, cards);
        Cages = [.. Layout.Slots.Select(s => s.Cage).Distinct(ReferenceEqualityComparer.Instance).Cast<CageModel>()];
        Typical = model.Typical.Value + cards.Sum(c => c.Typical.Value);
        Load = RackLoad.Of(model, cards);
        ModelPrice = (long)model.Price.Hundredths;
        CardPrice = cards.IsEmpty ? 0 : (long)cards[0].Price.Hundredths;
        Name = cards.IsEmpty ? model.Name : $"{model.Name} with {cards.Length} x {cards[0].Name}";
    }

    public DeviceModel Model { get; }

    /// <summary>Cards alike, as many as slots are filled.</summary>
    public ImmutableArray<CardModel> Cards { get; }

    public CageLayout Layout { get; }

    /// <summary>The different kinds of cage it has, in port order.</summary>
    public ImmutableArray<CageModel> Cages { get; }

    /// <summary>Watts under a usual load, without modules.</summary>
    public double Typical { get; }

    /// <summary>What one puts on its rack, without modules.</summary>
    public RackLoad Load { get; }

    /// <summary>Most watts, without modules.</summary>
    public double Maximum => Load.Watts;

    /// <summary>Kilograms, without modules.</summary>
    public double Weight => Load.Kilograms;

    public int Units => Model.Units;

    public string Name { get; }

    /// <summary>Hundredths the device costs.</summary>
    public long ModelPrice { get; }

    /// <summary>Hundredths each card costs.</summary>
    public long CardPrice { get; }

    /// <summary>Hundredths so many cost.</summary>
    /// <param name="count">How many.</param>
    /// <param name="free">Items that exist already and of which nothing is paid.</param>
    public long Price(long count, FreeItems free)
    {
        if (free.IsEmpty) return count * (ModelPrice + (Cards.Length * CardPrice));
        var price = Math.Max(0, count - free.CountOf(Model)) * ModelPrice;
        return Cards.IsEmpty ? price : price + (Math.Max(0, (count * Cards.Length) - free.CountOf(Cards[0])) * CardPrice);
    }
}
