using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;
using Lanewright.Model;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Trace;

/// <summary>The way of one patched cable from port to port: what light passes, in which fibres, and how the loss adds up against what the
/// interface type allows.</summary>
internal sealed class TraceDrawing
{
    private const double StrandY = Sheet.Top + 62;
    private const double WordsY = Sheet.Top + 120;
    private const double StairTop = Sheet.Top + 206;
    private const double StairHeight = 170;
    private const double Apart = 5;

    private readonly Plan plan;
    private readonly string id;
    private readonly string cable;
    private readonly CablePath path;
    private readonly TrunkPatch patch;
    private readonly Check? limit;
    private readonly double cell;

    /// <summary>Takes what is drawn.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="id">Identifier of the sheet.</param>
    /// <param name="cable">Identifier of the cable.</param>
    /// <param name="path">Its way.</param>
    /// <param name="patch">Where it goes through trunks.</param>
    /// <param name="limit">The comparison of the channel's loss; null where there is none.</param>
    public TraceDrawing(Plan plan, string id, string cable, CablePath path, TrunkPatch patch, Check? limit)
    {
        this.plan = plan;
        this.id = id;
        this.cable = cable;
        this.path = path;
        this.patch = patch;
        this.limit = limit;
        cell = (Sheet.Width - (2 * Sheet.Margin)) / path.Elements.Length;
    }

    /// <summary>Writes it.</summary>
    public void Write(MarkupWriter markup, bool isFile)
    {
        var loss = path.Loss?.Value ?? 0;
        var head = new SheetHead(id, $"The way of {cable} through {patch.Trunk.Name}",
            $"{path.Length}, {Numerals.Unit(Math.Round(loss, 2), "dB")} for the worst lane; "
            + "never look into an open end, whatever is said to be switched off", Description());
        var block = TitleBlock.Of(plan, cable, ("cable", cable, 1.2), ("trunk", $"{patch.Trunk.Name}-{Numerals.Whole(patch.Number)}", 1.6),
            ("method", (patch.Trunk.Cassette is null ? "type " : "") + patch.Trunk.Method, 0.8), ("length", path.Length.ToString(), 1),
            ("loss", Numerals.Unit(Math.Round(loss, 2), "dB"), 1),
            ("allowed", limit?.Limit is { } most ? Numerals.Unit(Math.Round(most, 2), "dB") : "not known", 1));
        Sheet.Write(markup, head, block, StairTop + StairHeight + 10, isFile, canvas =>
        {
            Strands(canvas);
            for (var i = 0; i < path.Elements.Length; i++) Symbol(canvas, path.Elements[i], i);
            Stair(canvas);
        });
    }

    private double Middle(int i) => Sheet.Margin + (cell * (i + 0.5));

    /// <summary>Duplex: the two fibres in their colours at the near panel. An array: its first and its last.</summary>
    private void Strands(Canvas canvas)
    {
        var trunk = patch.Trunk;
        var isTold = trunk.Cassette is null || (trunk.IsOrderKnown && patch.NearPort > 0);
        var (first, second) = trunk.Cassette is null ? (1, trunk.Positions) : ((2 * patch.NearPort) - 1, 2 * patch.NearPort);
        var (left, right) = (Middle(0), Middle(path.Elements.Length - 1));
        foreach (var (fibre, y) in new[] { (first, StrandY - Apart), (second, StrandY + Apart) })
        {
            var line = PathText.Of($"M{left} {y}H{right}");
            canvas.Path(line, "case");
            canvas.Path(line, "core", isTold ? FibreColour.Of(Math.Max(1, fibre)).Fill : DrawingStyle.Paper);
        }
    }

    private void Symbol(Canvas canvas, PathElement element, int i)
    {
        var x = Middle(i);
        switch (element.Kind)
        {
            case "port" or "module" or "cassette":
                var (width, height) = element.Kind == "module" ? (44.0, 34.0) : (52.0, 52.0);
                canvas.Box(x - (width / 2), StrandY - (height / 2), width, height, element.Kind == "cassette" ? "block" : "box");
                break;
            case "connection":
                canvas.Box(x - 11, StrandY - 15, 10, 30, "hollow");
                canvas.Box(x + 1, StrandY - 15, 10, 30, "hollow");
                break;
            case "trunk":
                canvas.Box(x - (cell * 0.46), StrandY - 11, cell * 0.92, 22, "ink");
                break;
            default:
                break;
        }
        var room = cell - 4;
        canvas.Text(x, WordsY, element.Kind, "head bold mid");
        canvas.Text(x, WordsY + 16, TextFit.Short(element.Id, room, 10.5), "small mid");
        canvas.Text(x, WordsY + 31, TextFit.Short(element.Position, room, 9.5), "tiny soft mid");
        if (element.Loss is { Value: > 0 } loss)
            canvas.Text(x, WordsY + 48, Numerals.Unit(Math.Round(loss.Value, 3), "dB"), "small mid");
    }

    private void Stair(Canvas canvas)
    {
        var most = Math.Max(limit?.Limit ?? 0, path.Loss?.Value ?? 0) * 1.05;
        if (most <= 0) return;
        double At(double loss) => StairTop + (loss / most * StairHeight);
        canvas.Text(Sheet.Margin, StairTop - 8, "loss so far, dB", "small soft");
        canvas.Line(Sheet.Margin, StairTop, Sheet.Width - Sheet.Margin, StairTop, "faint");
        var sum = 0.0;
        var line = PathText.Of($"M{Sheet.Margin} {StairTop}");
        for (var i = 0; i < path.Elements.Length; i++)
        {
            var before = sum;
            sum += path.Elements[i].Loss?.Value ?? 0;
            var isLong = path.Elements[i].Kind is "trunk" or "cord";
            line += isLong
                ? PathText.Of($"H{Middle(i) - (cell / 2)}L{Middle(i) + (cell / 2)} {At(sum)}")
                : PathText.Of($"H{Middle(i)}V{At(sum)}");
            if (sum - before > 0 && !isLong)
                canvas.Text(Middle(i) + 5, At(sum) - 4, Numerals.Fixed(sum, 2), "tiny soft halo");
        }
        canvas.Path(line + PathText.Of($"H{Sheet.Width - Sheet.Margin}"), "heavy");
        if (limit?.Limit is not { } allowed) return;
        canvas.Line(Sheet.Margin, At(allowed), Sheet.Width - Sheet.Margin, At(allowed), "act");
        canvas.Text(Sheet.Width - Sheet.Margin, At(allowed) - 5, $"allowed {Numerals.Fixed(allowed, 2)} dB", "small alert end halo");
    }

    private string Description()
    {
        ImmutableArray<string> words = [.. path.Elements.Select(e => $"{e.Kind} {e.Id} {e.Position}".TrimEnd())];
        return string.Join(", ", words) + ".";
    }
}
