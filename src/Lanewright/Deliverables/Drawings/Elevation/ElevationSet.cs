using System.Collections.Immutable;
using Lanewright.Engineering.Power;
using Lanewright.Engineering.Space;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Drawings.Elevation;

/// <summary>Rack elevations: the fronts and the rears of each row, a few racks a sheet.</summary>
internal static class ElevationSet
{
    /// <summary>Racks side by side on a sheet.</summary>
    public const int RacksOnSheet = 8;

    /// <summary>Sheets drawn at most, of each side: more would fill a folder nobody looks through. The table of racks holds all.</summary>
    private const int MostSheets = 60;

    /// <summary>The drawings.</summary>
    public static IEnumerable<Deliverable> Of(DesignedPlan designed)
    {
        if (designed.Racks.Value.Racks.IsEmpty) yield break;
        var strips = new Lazy<ILookup<int, StripLoad>>(() => designed.Strips.ToLookup(s => s.Rack.Index));
        var number = 0;
        foreach (var sheet in Sheets(designed.Racks.Value).Take(MostSheets))
        {
            number++;
            foreach (var isRear in new[] { false, true })
            {
                var name = $"{Identifiers.Elevation(number)}-{(isRear ? "rear" : "front")}";
                yield return DrawingFile.Of($"drawings/{name}.svg",
                    m => new ElevationDrawing(designed, sheet, strips, isRear).Write(m, name, isFile: true));
            }
        }
    }

    /// <summary>The racks of each sheet: those of one row from the first that is used to the last, in order, as many on each as come out
    /// even.</summary>
    public static IEnumerable<ImmutableArray<RackContents>> Sheets(RackBook book) =>
        from row in book.All.GroupBy(r => (r.Rack.Hall, r.Rack.Row))
        where row.Any(r => !r.Devices.IsEmpty)
        let racks = row.SkipWhile(r => r.Devices.IsEmpty).Reverse().SkipWhile(r => r.Devices.IsEmpty).Reverse().ToList()
        let sheets = (racks.Count + RacksOnSheet - 1) / RacksOnSheet
        from sheet in racks.Chunk((racks.Count + sheets - 1) / sheets)
        select sheet.ToImmutableArray();
}
