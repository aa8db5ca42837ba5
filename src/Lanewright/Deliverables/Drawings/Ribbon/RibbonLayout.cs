using System.Collections.Immutable;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Where everything on a ribbon stands.</summary>
internal sealed class RibbonLayout
{
    /// <summary>Size of the words over the columns.</summary>
    public const double HeadSize = 11.5;

    /// <summary>From one line of them to the next.</summary>
    public const double HeadStep = 15;

    /// <summary>Size of the words on dimension lines.</summary>
    public const double SpanSize = 10.5;

    /// <summary>From one line of them to the next.</summary>
    public const double SpanStep = 13;

    /// <summary>From one note to the next.</summary>
    public const double NoteStep = 15;

    private const double EndGap = 10;
    private const double PortWords = 160;
    private const double BodyWords = 240;
    private const double CableWords = 290;
    private const double NoteSize = 11;
    private const double LegendHeight = 26;

    private RibbonLayout(RibbonModel model)
    {
        Model = model;
        Heads = HeadsOf(model.Heads);
        var top = Sheet.Top + 12 + (Heads.Max(h => h.Length) * HeadStep) + 6;
        var (nearRows, farRows) = (EndGeometry.RowHeights(model.Near), EndGeometry.RowHeights(model.Far[0]));
        // Two ends face to face get rows of equal height, so that the cable runs straight.
        if (model.Far.Length == 1 && nearRows.Length == farRows.Length) nearRows = farRows = [.. nearRows.Zip(farRows, Math.Max)];
        var near = EndGeometry.Of(model.Near, isFar: false, top, nearRows);
        var far = Stack(model.Far, top, farRows);
        var height = Math.Max(near.Height, far[^1].Bottom - top);
        Near = near.Moved((height - near.Height) / 2);
        var down = (height - (far[^1].Bottom - top)) / 2;
        Far = [.. far.Select(f => f.Moved(down))];
        SpanRows = RowsOf(model.Spans, top + height + 12);
        var below = SpanRows.IsEmpty ? top + height : SpanRows.Max(r => r.LineY) + 16;
        LegendY = below + 10;
        NotesY = LegendY + LegendHeight + 6;
        Notes = [.. model.Notes.SelectMany(n => TextFit.Lines(n, Sheet.Width - (2 * Sheet.Margin), NoteSize))];
        Bottom = NotesY + (Notes.Length * NoteStep);
    }

    /// <summary>What is shown.</summary>
    public RibbonModel Model { get; }

    /// <summary>The words over the columns, in lines: port, body, cable, body, port.</summary>
    public ImmutableArray<ImmutableArray<string>> Heads { get; }

    /// <summary>The first end.</summary>
    public EndGeometry Near { get; }

    /// <summary>The far ends.</summary>
    public ImmutableArray<EndGeometry> Far { get; }

    /// <summary>The dimension lines: the height of each line and the lines of its text.</summary>
    public ImmutableArray<(Span Span, double LineY, ImmutableArray<string> Words)> SpanRows { get; }

    /// <summary>Height of the key.</summary>
    public double LegendY { get; }

    /// <summary>Height of the first note.</summary>
    public double NotesY { get; }

    /// <summary>The notes in lines.</summary>
    public ImmutableArray<string> Notes { get; }

    /// <summary>Where the drawing ends.</summary>
    public double Bottom { get; }

    /// <summary>Lower edge of the ends.</summary>
    public double EndsBottom => Math.Max(Near.Bottom, Far[^1].Bottom);

    /// <summary>Lays a ribbon out.</summary>
    public static RibbonLayout Of(RibbonModel model) => new(model);

    /// <summary>Where a dimension line may end, across the sheet.</summary>
    public double X(Stop stop) => stop switch
    {
        Stop.NearPort => EndColumns.PortMiddle,
        Stop.NearBlock => Near.Columns.Block,
        Stop.NearMedia => Near.Columns.Media,
        Stop.NearPlug => Near.Columns.Plug,
        Stop.FarPlug => Sheet.Width - Far[0].Columns.Plug,
        Stop.FarMedia => Sheet.Width - Far[0].Columns.Media,
        Stop.FarBlock => Sheet.Width - Far[0].Columns.Block,
        _ => Sheet.Width - EndColumns.PortMiddle,
    };

    private static List<EndGeometry> Stack(ImmutableArray<RibbonEnd> ends, double top, double[] rows)
    {
        var stacked = new List<EndGeometry>();
        foreach (var end in ends)
        {
            stacked.Add(EndGeometry.Of(end, isFar: true, top, rows));
            top = stacked[^1].Bottom + EndGap;
        }
        return stacked;
    }

    private static ImmutableArray<ImmutableArray<string>> HeadsOf(RibbonHeads heads) =>
        [Lines(heads.NearPort, PortWords), Lines(heads.NearBody, BodyWords), Lines(heads.Cable, CableWords),
            Lines(heads.FarBody, BodyWords), Lines(heads.FarPort, PortWords)];

    private static ImmutableArray<string> Lines(ImmutableArray<string> texts, double width) =>
        [.. texts.SelectMany((t, i) => TextFit.Lines(t, width, HeadSize, most: 2, bold: i < 2))];

    private ImmutableArray<(Span, double, ImmutableArray<string>)> RowsOf(ImmutableArray<Span> spans, double y)
    {
        var rows = ImmutableArray.CreateBuilder<(Span, double, ImmutableArray<string>)>();
        foreach (var row in spans.GroupBy(s => s.Row).OrderBy(g => g.Key))
        {
            var words = row.Select(s => (Span: s, Words: TextFit.Lines(s.Text, Math.Abs(X(s.To) - X(s.From)) - 6, SpanSize, most: 4)))
                .ToList();
            y += (words.Max(w => w.Words.Length) * SpanStep) + 10;
            rows.AddRange(words.Select(w => (w.Span, y, w.Words)));
            y += 2;
        }
        return rows.ToImmutable();
    }
}
