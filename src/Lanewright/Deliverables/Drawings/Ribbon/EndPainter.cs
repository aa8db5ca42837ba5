using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Draws one end: port, contacts, body, block, diodes, places.</summary>
internal sealed class EndPainter(Canvas canvas, EndGeometry geometry, bool isFar, bool hasPortFec)
{
    private const double BlockInset = 6;
    private const double PlaceRadius = 9;
    private readonly EndColumns columns = geometry.Columns;
    private RibbonEnd End => geometry.End;

    /// <summary>Draws it.</summary>
    public void Draw()
    {
        canvas.Begin("side");
        foreach (var lane in geometry.Contacts) Contact(lane);
        Port();
        if (End.Body != EndBody.Socket) Body();
        canvas.End();
    }

    private double X(double x) => isFar ? Sheet.Width - x : x;

    private void Box(double left, double right, double top, double bottom, string style, double round = 0) =>
        canvas.Box(Math.Min(X(left), X(right)), top, right - left, bottom - top, style, round);

    private void Line(double x1, double y1, double x2, double y2, string style) => canvas.Line(X(x1), y1, X(x2), y2, style);

    /// <summary>What leaves the first end goes to the right.</summary>
    private bool GoesRight(bool leaves) => leaves != isFar;

    private void Contact(ContactLane lane)
    {
        var right = GoesRight(lane.Leaves);
        Line(EndColumns.PortRight, lane.Y, EndColumns.BodyLeft, lane.Y, right ? "fine contact" : "fine contact broken");
        Arrow.Head(canvas, X(158), lane.Y, 2.6, right, right);
    }

    private void Port()
    {
        Box(EndColumns.PortLeft, EndColumns.PortRight, geometry.Top, geometry.Bottom, "box port");
        var middle = (geometry.Top + geometry.Bottom) / 2;
        var isSmall = geometry.Height < 90;
        canvas.Text(X(EndColumns.PortLeft + 12), isSmall ? geometry.Top + 20 : middle - 2, End.Name, isFar ? "sub bold end" : "sub bold");
        if (hasPortFec)
        {
            var y = isSmall ? geometry.Bottom - 10 : middle + 16;
            Tag(EndColumns.PortLeft + 10, y - 9, "FEC");
        }
        for (var port = 0; port < End.Ports.Length; port++) PortName(port);
    }

    private void PortName(int port)
    {
        if (End.Ports[port].Length == 0) return;
        foreach (var group in geometry.Contacts.Where(c => c.Port == port).GroupBy(c => c.Leaves))
        {
            var (first, last) = (group.Min(c => c.Y), group.Max(c => c.Y));
            Line(EndColumns.PortRight - 5, first - 2.5, EndColumns.PortRight - 5, last + 2.5, "fine");
            canvas.Text(X(EndColumns.PortRight - 9), ((first + last) / 2) + 3.5, End.Ports[port], isFar ? "small" : "small end");
        }
    }

    private void Tag(double left, double top, string text)
    {
        Box(left, left + 30, top, top + 15, "block");
        canvas.Text(X(left + 15), top + 11.3, text, "tiny mid");
    }

    private void Body()
    {
        Box(EndColumns.BodyLeft, columns.BodyRight, geometry.Top, geometry.Bottom, "box body");
        if (End.Body == EndBody.PassiveEnd || End.Body == EndBody.ActiveOpticalEnd) LaneNumbers();
        if (End.Block is { } block) Block(block);
        if (End.Body is EndBody.Module or EndBody.ActiveOpticalEnd) Diodes();
        if (End.Combines) Combiners();
        if (End.Body == EndBody.ActiveCopperEnd) CopperLanes();
    }

    private void Block(LaneBlock block)
    {
        var (top, bottom) = (geometry.Top + BlockInset, geometry.Bottom - BlockInset);
        Box(columns.Block - EndColumns.BlockHalf, columns.Block + EndColumns.BlockHalf, top, bottom, "block");
        var words = new List<(string Text, string Style)> { (block.Name, "small mid") };
        if (block.Ratio.Length > 0) words.Add((block.Ratio, "small bold mid"));
        if (block.MakesCode) words.Add(("+ FEC", "small bold mid"));
        var y = ((top + bottom) / 2) - ((words.Count - 1) * 7) + 4;
        foreach (var (text, style) in words)
        {
            canvas.Text(X(columns.Block), y, text, style);
            y += 14;
        }
    }

    /// <summary>Every lane of light from its laser or to its photodiode.</summary>
    private void Diodes()
    {
        var isCable = End.Body == EndBody.ActiveOpticalEnd;
        var at = isCable ? columns.Media + 22 : columns.Media;
        var from = isCable ? EndColumns.BodyLeft + 40 : columns.Block + EndColumns.BlockHalf;
        for (var row = 0; row < End.Plug.Rows.Length; row++)
        {
            var lanes = End.Plug.Rows[row].Lanes;
            for (var i = 0; i < lanes.Length; i++)
            {
                var y = geometry.Lane(row, i);
                var stop = End.Combines && lanes.Length > 1 ? EndColumns.MuxLeft : columns.BodyRight;
                var right = GoesRight(lanes[i].Leaves);
                Line(from, y, stop, y, right ? "fine lane" : "fine lane broken");
                Arrow.Diode(canvas, X(at), y, right, lanes[i].Leaves);
                if (isCable) continue;
                canvas.Text(X(from + 4), y - 3, NameOf(lanes[i]), isFar ? "tiny soft end" : "tiny soft");
                var room = (End.Combines && lanes.Length > 1 ? EndColumns.MuxLeft : columns.BodyRight) - EndColumns.Label - 1;
                canvas.Text(X(EndColumns.Label), y - 3, TextFit.Short(lanes[i].Note, room, 9.5), isFar ? "tiny end" : "tiny");
            }
        }
    }

    /// <summary>Where several wavelengths share a fibre.</summary>
    private void Combiners()
    {
        for (var row = 0; row < End.Plug.Rows.Length; row++)
        {
            var count = End.Plug.Rows[row].Lanes.Length;
            if (count < 2) continue;
            var (top, bottom, y) = (geometry.Lane(row, 0) - 6, geometry.Lane(row, count - 1) + 6, geometry.Row(row));
            var (left, right) = (X(EndColumns.MuxLeft), X(EndColumns.MuxRight));
            canvas.Path(PathText.Of($"M{left} {top}L{right} {y - 5}V{y + 5}L{left} {bottom}Z"), "block mux");
            Line(EndColumns.MuxRight, y, columns.BodyRight, y, "ink");
        }
    }

    private static string NameOf(MediaLane lane) => (lane.Leaves ? "Tx" : "Rx") + Numerals.Whole(lane.Number);

    private void LaneNumbers()
    {
        var rows = End.Plug.Rows;
        for (var row = 0; row < rows.Length; row++)
        {
            foreach (var lane in rows[row].Lanes)
                canvas.Text(X(EndColumns.BodyLeft + 8), geometry.Row(row) + 3.5, NameOf(lane), isFar ? "tiny soft end" : "tiny soft");
            if (End.Body != EndBody.PassiveEnd) continue;
            var style = GoesRight(rows[row].Lanes[0].Leaves) ? "fine" : "fine broken";
            Line(EndColumns.BodyLeft + 34, geometry.Row(row), columns.BodyRight, geometry.Row(row), style);
        }
    }

    private void CopperLanes()
    {
        var rows = End.Plug.Rows;
        for (var row = 0; row < rows.Length; row++)
        {
            var (lane, y) = (rows[row].Lanes[0], geometry.Row(row));
            Line(columns.Block + EndColumns.BlockHalf, y, columns.BodyRight, y, GoesRight(lane.Leaves) ? "fine lane" : "fine lane broken");
            canvas.Text(X(columns.BodyRight - 5), y - 2.5, NameOf(lane), isFar ? "tiny soft" : "tiny soft end");
        }
    }

    /// <summary>The places of the plug, each in the colour of the fibre that meets it.</summary>
    /// <param name="fibreOf">Number of the fibre at a row; 0 or missing where none is known.</param>
    public void Places(IReadOnlyDictionary<int, int> fibreOf)
    {
        if (End.Body != EndBody.Module) return;
        var rows = End.Plug.Rows;
        for (var first = 0; first < rows.Length;)
        {
            var last = first;
            while (last + 1 < rows.Length && !(rows[last + 1].IsSetOff && End.Plug.IsPairs)) last++;
            Outline(first, last);
            first = last + 1;
        }
        for (var row = 0; row < rows.Length; row++)
        {
            if (!rows[row].IsDark)
            {
                Place(row, fibreOf.GetValueOrDefault(row));
                continue;
            }
            canvas.Circle(X(columns.Plug), geometry.Row(row), PlaceRadius, "dark place");
            canvas.Text(X(columns.Plug), geometry.Row(row) + 3.5, rows[row].Place, "tiny soft mid");
        }
    }

    private void Outline(int first, int last)
    {
        var (top, bottom) = (geometry.Row(first) - 12, geometry.Row(last) + 12);
        Box(columns.Plug - 13, columns.Plug + 13, top, bottom, "box plug", 6);
        canvas.Text(X(columns.Plug), top - 4, End.Plug.PlugName, "tiny mid");
    }

    /// <summary>A plug that does not count its places shows the number of the fibre; one whose count is not known shows
    /// nothing.</summary>
    private string NumberOf(int row, int fibre)
    {
        var place = End.Plug.Rows[row].Place;
        return place.Length > 0 ? place : End.Plug.IsPairs ? Numerals.Whole(fibre) : "";
    }

    /// <summary>A lit place with its number; in no colour when no fibre meets it.</summary>
    private void Place(int row, int fibre)
    {
        var y = geometry.Row(row);
        Line(columns.BodyRight, y, columns.Plug - PlaceRadius, y, "ink");
        if (fibre == 0)
        {
            canvas.Circle(X(columns.Plug), y, PlaceRadius, "hollow place");
            canvas.Text(X(columns.Plug), y + 3.5, End.Plug.Rows[row].Place, "tiny mid");
            return;
        }
        var colour = FibreColour.Of(fibre);
        canvas.Circle(X(columns.Plug), y, PlaceRadius, "lit place", colour.Fill);
        canvas.Text(X(columns.Plug), y + 3.5, NumberOf(row, fibre), colour.IsDark ? "tiny mid light" : "tiny mid");
        canvas.Text(X(columns.Plug - 15), y - 3.5, colour.Label, isFar ? "tiny soft" : "tiny soft end");
    }
}
