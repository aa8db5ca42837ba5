using System.Collections.Immutable;
using Lanewright.Deliverables.Markup;
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

    private readonly Plan plan;
    private readonly string id;
    private readonly string cable;
    private readonly CablePath path;
    private readonly double cell;

    /// <summary>Takes what is drawn.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="id">Identifier of the sheet.</param>
    /// <param name="cable">Identifier of the cable.</param>
    /// <param name="path">Its way.</param>
    public TraceDrawing(Plan plan, string id, string cable, CablePath path)
    {
        this.plan = plan;
        this.id = id;
        this.cable = cable;
        this.path = path;
        cell = (Sheet.Width - (2 * Sheet.Margin)) / path.Elements.Length;
    }

    /// <summary>Writes it.</summary>
    public void Write(MarkupWriter markup, bool isFile)
    {
        var loss = path.Loss?.Value ?? 0;
        var trunks = string.Join(", ", path.Patches.Select(p => p.Trunk.NameOf(p.Number)));
        var methods = string.Join(", ", path.Patches.Select(p => p.Trunk.MethodName).Distinct());
        var head = new SheetHead(id, $"The way of {cable} through {trunks}",
            $"{path.Length}, {Numerals.Unit(Math.Round(loss, 2), "dB")} for the worst lane; "
            + "never look into an open end, whatever is said to be switched off", Description());
        var block = TitleBlock.Of(plan, cable, ("cable", cable, 1.2), (path.Patches.Length == 1 ? "trunk" : "trunks", trunks, 2.6),
            ("method", methods, 0.8), ("length", path.Length.ToString(), 1),
            ("loss", Numerals.Unit(Math.Round(loss, 2), "dB"), 1),
            ("allowed", path.Allowed is { } most ? Numerals.Unit(Math.Round(most, 2), "dB") : "not known", 1));
        Sheet.Write(markup, head, block, StairTop + StairHeight + 10, isFile, canvas =>
        {
            new TraceStrands(path, Sheet.Margin, cell, StrandY).Draw(canvas);
            for (var i = 0; i < path.Elements.Length; i++) Symbol(canvas, path.Elements[i], i);
            Stair(canvas);
        });
    }

    private double Middle(int i) => Sheet.Margin + (cell * (i + 0.5));

    private void Symbol(Canvas canvas, PathElement element, int i)
    {
        var x = Middle(i);
        switch (element.Kind)
        {
            case "port" or "module" or "cassette":
                var width = Math.Min(cell * 0.7, element.Kind == "module" ? 44.0 : 52.0);
                canvas.Box(x - (width / 2), StrandY - (TraceStrands.Height / 2), width, TraceStrands.Height,
                    element.Kind == "cassette" ? "block" : "box");
                break;
            case "connection":
                var (plug, high) = (Math.Min(10, cell / 6), TraceStrands.Height - 8);
                canvas.Box(x - plug - 1, StrandY - (high / 2), plug, high, "hollow");
                canvas.Box(x + 1, StrandY - (high / 2), plug, high, "hollow");
                break;
            case "trunk":
                canvas.Box(x - (cell * 0.5), StrandY - (TraceStrands.Height / 2) - 2, cell, TraceStrands.Height + 4, "ink");
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
        var most = Math.Max(path.Allowed ?? 0, path.Loss?.Value ?? 0) * 1.05;
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
        if (path.Allowed is not { } allowed) return;
        canvas.Line(Sheet.Margin, At(allowed), Sheet.Width - Sheet.Margin, At(allowed), "act");
        canvas.Text(Sheet.Width - Sheet.Margin, At(allowed) - 5, $"allowed {Numerals.Fixed(allowed, 2)} dB", "small alert end halo");
    }

    private string Description()
    {
        ImmutableArray<string> words = [.. path.Elements.Select(e => $"{e.Kind} {e.Id} {e.Position}".TrimEnd())];
        return string.Join(", ", words) + ".";
    }
}
