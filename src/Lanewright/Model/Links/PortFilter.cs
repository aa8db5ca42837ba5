using System.Collections.Immutable;
using Lanewright.Model.Devices;
using Lanewright.Quantities;

namespace Lanewright.Model.Links;

/// <summary>A choice of cages: by number, written <c>1..16, 20</c>, or as documents name them on cards, written <c>1/1..1/4</c>.</summary>
/// <param name="Numbers">The numbers chosen, ascending.</param>
public sealed record PortFilter(ImmutableArray<int> Numbers)
{
    private const int LargestNumber = 4096;

    /// <summary>Cages on cards by what is printed there; they have no number until it is known of which device.</summary>
    public ImmutableArray<string> Labels { get; init; } = [];

    /// <summary>A number that is named more than once; null where none is.</summary>
    public int? NamedTwice { get; init; }

    /// <summary>Reads a choice.</summary>
    public static bool TryRead(string text, out PortFilter filter)
    {
        filter = new PortFilter([]);
        var numbers = new SortedSet<int>();
        var labels = new List<string>();
        int? twice = null;
        foreach (var part in text.Split(',', StringSplitOptions.TrimEntries))
        {
            var ends = part.Split("..", StringSplitOptions.TrimEntries);
            if (ends.Length is < 1 or > 2) return false;
            if (!TryEnd(ends[0], out var card, out var from) || !TryEnd(ends[^1], out var lastCard, out var to)) return false;
            // The card need not be said again: 1/1..4 is 1/1..1/4.
            if (lastCard != card && !(card > 0 && lastCard == 0)) return false;
            if (from < 1 || to < from || to > LargestNumber) return false;
            for (var i = from; i <= to; i++)
            {
                if (card == 0 && !numbers.Add((int)i)) twice ??= (int)i;
                if (card == 0) continue;
                labels.Add($"{Numerals.Whole(card)}/{Numerals.Whole(i)}");
            }
        }
        filter = new PortFilter([.. numbers]) { Labels = [.. labels.Distinct()], NamedTwice = twice };
        return true;
    }

    /// <summary>The choice with numbers alone, for devices with a layout; null when the layout has not one of the cages.</summary>
    /// <param name="layout">The cages of the devices.</param>
    /// <param name="missing">What it has not; empty otherwise.</param>
    public PortFilter? For(CageLayout layout, out string missing)
    {
        missing = "";
        var numbers = Numbers.ToHashSet();
        foreach (var label in Labels)
        {
            var cage = layout.Slots.Select(s => s.Label).ToList().IndexOf(label);
            if (cage < 0)
            {
                missing = label;
                return null;
            }
            numbers.Add(cage + 1);
        }
        return new PortFilter([.. numbers.Order()]) { NamedTwice = NamedTwice };
    }

    private static bool TryEnd(string text, out long card, out long number)
    {
        (card, number) = (0, 0);
        var parts = text.Split('/');
        return parts.Length switch
        {
            1 => Numerals.TryWhole(parts[0], out number),
            2 => Numerals.TryWhole(parts[0], out card) && card is > 0 and <= LargestNumber && Numerals.TryWhole(parts[1], out number),
            _ => false,
        };
    }
}
