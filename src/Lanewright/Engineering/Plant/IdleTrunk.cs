using System.Collections.Immutable;
using Lanewright.Model;
using Lanewright.Model.Plant;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>A trunk that no link is patched through, from the front of one panel to that of the other.</summary>
/// <param name="Trunk">The trunks.</param>
/// <param name="Number">Which of them, from 1.</param>
/// <param name="Length">Its length; null when it cannot be told.</param>
/// <param name="Polarity">Where transmitters and receivers of a link through it alone would meet.</param>
/// <param name="Elements">What light would pass.</param>
public sealed record IdleTrunk(TrunkGroup Trunk, int Number, Length? Length, WayPolarity Polarity, ImmutableArray<PathElement> Elements)
{
    /// <summary>One of a group.</summary>
    public static IdleTrunk Of(Plan plan, PlantBook book, TrunkGroup trunk, int number)
    {
        var state = book.Trunks[trunk.Index];
        var elements = ImmutableArray.CreateBuilder<PathElement>();
        Front(isFar: false);
        elements.Add(new PathElement("trunk", trunk.NameOf(number), $"type {TrunkFronts.CableType(trunk)}, {trunk.Cable.Name}", null));
        for (var i = 1; i <= trunk.PairsBetween; i++)
            elements.Add(new PathElement("connection", trunk.NameOf(number), $"on the way, {i} of {trunk.PairsBetween}", null));
        Front(isFar: true);
        return new IdleTrunk(trunk, number, state.Length, state.Alone, elements.ToImmutable());

        void Front(bool isFar)
        {
            var place = $"{plan.Devices.Name(isFar ? trunk.To : trunk.From)}:{Numerals.Padded(book.SlotOf(trunk, isFar) + number - 1, 2)}";
            var cassette = trunk.CassetteAt(isFar);
            var ports = cassette is null ? "array" : $"ports 1 to {Numerals.Whole(trunk.Fibres / 2)}";
            var front = new PathElement("connection", place, ports, null);
            if (!isFar) elements.Add(front);
            if (cassette is not null)
                elements.Add(new PathElement("cassette", cassette.Name, TrunkFronts.CassetteType(trunk, isFar), null));
            if (isFar) elements.Add(front);
        }
    }
}
