namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Spreads the electrical lanes of each port over the height of the media lanes they become.</summary>
internal static class ContactLanes
{
    /// <summary>The lanes of an end.</summary>
    public static IEnumerable<ContactLane> Of(EndGeometry geometry)
    {
        if (geometry.End.LanesPerPort == 0) yield break;
        for (var port = 0; port < geometry.End.Ports.Length; port++)
        {
            if (Extent(geometry, port, leaves: true) is not { } outward) continue;
            if (Extent(geometry, port, leaves: false) is not { } inward) continue;
            // Lanes that share their fibres with those of the other direction get half of the height each.
            var overlap = Math.Min(outward.To, inward.To) - Math.Max(outward.From, inward.From);
            if (overlap > 1) (outward, inward) = Halves(outward, inward, geometry.IsFar);
            foreach (var lane in Spread(geometry, port, true, outward)) yield return lane;
            foreach (var lane in Spread(geometry, port, false, inward)) yield return lane;
        }
    }

    private static (double From, double To)? Extent(EndGeometry geometry, int port, bool leaves)
    {
        var (from, to) = (double.MaxValue, double.MinValue);
        var rows = geometry.End.Plug.Rows;
        for (var row = 0; row < rows.Length; row++)
        {
            for (var lane = 0; lane < rows[row].Lanes.Length; lane++)
            {
                if (rows[row].Lanes[lane].Port != port || rows[row].Lanes[lane].Leaves != leaves) continue;
                from = Math.Min(from, geometry.Lane(row, lane) - geometry.HalfLane(row));
                to = Math.Max(to, geometry.Lane(row, lane) + geometry.HalfLane(row));
            }
        }
        return from <= to ? (from, to) : null;
    }

    private static ((double From, double To) Outward, (double From, double To) Inward) Halves(
        (double From, double To) outward, (double From, double To) inward, bool isFar)
    {
        var (from, to) = (Math.Min(outward.From, inward.From), Math.Max(outward.To, inward.To));
        var middle = (from + to) / 2;
        const double gap = 4;
        var (upper, lower) = ((from, middle - gap), (middle + gap, to));
        return isFar ? (lower, upper) : (upper, lower);
    }

    private static IEnumerable<ContactLane> Spread(EndGeometry geometry, int port, bool leaves, (double From, double To) extent)
    {
        var count = geometry.End.LanesPerPort;
        var pitch = (extent.To - extent.From) / count;
        for (var i = 0; i < count; i++) yield return new ContactLane(port, leaves, extent.From + (pitch * (i + 0.5)));
    }
}
