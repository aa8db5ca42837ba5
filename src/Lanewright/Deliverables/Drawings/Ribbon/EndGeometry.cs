namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Heights of the rows and lanes of one end, once its upper edge is known.</summary>
internal sealed class EndGeometry
{
    private const double Padding = 9;
    private const double FibrePitch = 22;
    private const double PairPitch = 15;
    private const double StreamPitch = 26;
    private const double LanePitch = 19;
    private const double GroupGap = 9;
    private const double LeastContactPitch = 5.2;
    private const double LeastHeight = 62;
    private readonly double[] rowHeight;
    private readonly double[] rowMiddle;

    private EndGeometry(RibbonEnd end, bool isFar, double top, double[] rowHeight, double height, double[] rowMiddle)
    {
        this.rowHeight = rowHeight;
        End = end;
        IsFar = isFar;
        Top = top;
        Height = height;
        this.rowMiddle = rowMiddle;
        Contacts = [.. ContactLanes.Of(this)];
    }

    /// <summary>The end.</summary>
    public RibbonEnd End { get; }

    /// <summary>Whether it is a far end, the mirror of the first.</summary>
    public bool IsFar { get; }

    /// <summary>Its columns.</summary>
    public EndColumns Columns => EndColumns.Of(End.Body);

    /// <summary>Upper edge.</summary>
    public double Top { get; }

    /// <summary>Height.</summary>
    public double Height { get; }

    /// <summary>Lower edge.</summary>
    public double Bottom => Top + Height;

    /// <summary>The electrical lanes between port and cage.</summary>
    public IReadOnlyList<ContactLane> Contacts { get; }

    /// <summary>Heights of the rows an end needs.</summary>
    public static double[] RowHeights(RibbonEnd end) => [.. end.Plug.Rows.Select(r => RowHeight(end, r))];

    /// <summary>Places an end with its upper edge at a height.</summary>
    /// <param name="end">The end.</param>
    /// <param name="isFar">Whether it is a far end.</param>
    /// <param name="top">Its upper edge.</param>
    /// <param name="heights">Heights of its rows.</param>
    public static EndGeometry Of(RibbonEnd end, bool isFar, double top, double[] heights)
    {
        var rows = end.Plug.Rows;
        var middle = new double[rows.Length];
        var y = 0.0;
        for (var i = 0; i < rows.Length; i++)
        {
            if (rows[i].IsSetOff) y += GroupGap;
            middle[i] = y + (heights[i] / 2);
            y += heights[i];
        }
        var total = Math.Max(LeastHeight, y + (2 * Padding));
        var first = top + ((total - y) / 2);
        for (var i = 0; i < middle.Length; i++) middle[i] += first;
        return new EndGeometry(end, isFar, top, heights, total, middle);
    }

    /// <summary>The same end lower on the sheet.</summary>
    public EndGeometry Moved(double down) => Of(End, IsFar, Top + down, rowHeight);

    /// <summary>The middle of a row.</summary>
    public double Row(int row) => rowMiddle[row];

    /// <summary>The middle of one of the lanes that share a row.</summary>
    public double Lane(int row, int lane)
    {
        var count = End.Plug.Rows[row].Lanes.Length;
        return End.Combines && count > 1 ? rowMiddle[row] + ((lane - ((count - 1) / 2.0)) * LanePitch) : rowMiddle[row];
    }

    /// <summary>Space a lane may take up and down from its middle.</summary>
    public double HalfLane(int row)
    {
        var lanes = End.Plug.Rows[row].Lanes.Length;
        return End.Combines && lanes > 1 ? LanePitch / 2 : rowHeight[row] / 2;
    }

    private static double RowHeight(RibbonEnd end, PlugRow row)
    {
        var pitch = end.Body switch
        {
            EndBody.Module => FibrePitch,
            EndBody.Socket or EndBody.PairModule => StreamPitch,
            _ => end.Plug.Rows.Length <= 2 * end.Ports.Length ? StreamPitch : PairPitch,
        };
        if (row.IsDark) return pitch;
        if (end.Body == EndBody.Module && row.Lanes.Length > 1) pitch = Math.Max(pitch, (row.Lanes.Length * LanePitch) + 6);
        var (port, leaves) = (row.Lanes[0].Port, row.Lanes[0].Leaves);
        var sharing = end.Plug.Rows.Count(r => r.Lanes.Any(l => l.Port == port && l.Leaves == leaves));
        return Math.Max(pitch, (end.LanesPerPort * LeastContactPitch / sharing) + 3);
    }
}
