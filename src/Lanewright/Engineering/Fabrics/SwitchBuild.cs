using System.Collections.Immutable;
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
        Maximum = model.Maximum.Value + cards.Sum(c => c.Maximum.Value);
        Weight = model.Weight.Kilograms + cards.Sum(c => c.Weight.Kilograms);
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

    /// <summary>Most watts, without modules.</summary>
    public double Maximum { get; }

    /// <summary>Kilograms, without modules.</summary>
    public double Weight { get; }

    public int Units => Model.Units;

    public string Name { get; }

    /// <summary>Price of one in hundredths.</summary>
    /// <param name="free">Items that exist already and of which nothing is paid.</param>
    public long Price(FreeItems free) => free.PriceOf(Model) + Cards.Sum(free.PriceOf);
}
