using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Cabling;

/// <summary>All lengths any cable of a catalogue can have. Two needs between the same two of them order the same cables, so links
/// are told apart by grid place and not by millimetres.</summary>
public sealed class LengthGrid
{
    private readonly double[] stocked;
    private readonly double step;

    /// <summary>Takes the lengths of a catalogue and of what is in stock.</summary>
    public LengthGrid(Catalogue catalogue, IEnumerable<Length> inStock)
    {
        var cables = catalogue.Assemblies.Cast<CableItem>().Concat(catalogue.Cords).ToList();
        step = cables.Select(c => c.Step).OfType<Length>().Where(s => s.Metres > 0).Select(s => s.Metres).DefaultIfEmpty(1).Min();
        var lengths = cables.SelectMany(c => c.Lengths).Concat(inStock).Select(l => l.Metres).ToList();
        var longest = lengths.DefaultIfEmpty(0).Max();
        // Cables made to order have lengths of their own between the stocked ones of others.
        for (var made = step; made <= longest; made += step) lengths.Add(made);
        stocked = [.. lengths.Distinct().Order()];
    }

    /// <summary>The place of a need: the first length not below it.</summary>
    public int PlaceOf(Length needed)
    {
        var metres = needed.Metres;
        if (stocked.Length == 0 || metres > stocked[^1]) return stocked.Length + (int)Math.Ceiling((metres / step) - 1e-9);
        // Asked for every link of every fabric that is tried: the general search of the runtime takes several times as long.
        var (low, high) = (0, stocked.Length - 1);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (stocked[middle] < metres) low = middle + 1;
            else high = middle;
        }
        return low;
    }

    /// <summary>The length of a place.</summary>
    public Length LengthOf(int place) =>
        Length.FromMetres(place < stocked.Length ? stocked[place] : (place - stocked.Length) * step);
}
