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
    private const double StrandTop = Sheet.Top + Sheet.CautionStep + 50;
    private const double LineStep = 13;
    private const double StairHeight = 150;
    private const double TinySize = 9.5;

    private readonly Plan plan;
    private readonly string id;
    private readonly TracedCable cable;
    private readonly CablePath path;
    private readonly TraceCells cells;
    private readonly TraceStrands strands;
    private readonly double wordsY;
    private readonly double stairTop;

    /// <summary>Takes what is drawn.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="id">Identifier of the sheet.</param>
    /// <param name="cable">The cable; of several legs the first is drawn.</param>
    public TraceDrawing(Plan plan, string id, TracedCable cable)
    {
        this.plan = plan;
        this.id = id;
        this.cable = cable;
        path = cable.Legs[0].Path;
        cells = new TraceCells(path.Elements);
        strands = new TraceStrands(path, cells, StrandTop);
        wordsY = StrandTop + strands.Height + 22;
        stairTop = wordsY + (6 * LineStep) + 26;
    }

    /// <summary>Writes it.</summary>
    public void Write(MarkupWriter markup, bool isFile)
    {
        var leg = cable.Legs[0];
        var loss = Numerals.Unit(Math.Round(path.Loss?.Value ?? 0, 2), "dB");
        var trunks = string.Join(", ", path.Patches.Select(p => p.Trunk.NameOf(p.Number)));
        var methods = string.Join(", ", path.Patches.Select(p => p.Trunk.MethodName).Distinct());
        var whole = cable.Of == 1 ? cable.Cable : $"{cable.Cable}, leg {Numerals.Whole(leg.Number)} of {Numerals.Whole(cable.Of)},";
        var head = new SheetHead(id, $"The way of {whole} through {trunks}",
            $"{path.Length}, {loss} for the worst lane. A line keeps the colour of its lane; dots show the fibre of the trunk.",
            Description())
        {
            Caution = "Never look into an open end, whatever is said to be switched off.",
        };
        var block = TitleBlock.Of(plan, cable.Cable, leg.Verdict, leg.Reasons, ("cable", cable.Cable, 1.2),
            (path.Patches.Length == 1 ? "trunk" : "trunks", trunks, 2.2), ("method", methods, 0.8), ("length", path.Length.ToString(), 1),
            ("loss", loss, 1), ("allowed", path.Allowed is { } most ? Numerals.Unit(Math.Round(most, 2), "dB") : "not known", 1));
        Sheet.Write(markup, head, block, stairTop + StairHeight + 10, isFile, canvas =>
        {
            strands.Draw(canvas, isBelowSymbols: true);
            for (var i = 0; i < path.Elements.Length; i++) Symbol(canvas, path.Elements[i], i);
            strands.Draw(canvas, isBelowSymbols: false);
            canvas.Text(Sheet.Margin, wordsY + (6 * LineStep), "dB of each", "tiny soft");
            Stair(canvas);
        });
    }

    private void Symbol(Canvas canvas, PathElement element, int i)
    {
        var (x, middle, height) = (cells.Middle(i), strands.Middle, strands.Height);
        switch (element.Kind)
        {
            case "port":
                canvas.Box(x - TraceStrands.HalfPort, middle - (height / 2), 2 * TraceStrands.HalfPort, height, "box");
                break;
            case "module" or "cassette":
                var width = Math.Min(cells.Width(i) * 0.7, 52.0);
                canvas.Box(x - (width / 2), middle - (height / 2), width, height, element.Kind == "cassette" ? "block" : "box");
                break;
            case "connection":
                var (plug, high) = (Math.Min(10, cells.Width(i) / 4), height - 8);
                canvas.Box(x - plug - 1, middle - (high / 2), plug, high, "hollow");
                canvas.Box(x + 1, middle - (high / 2), plug, high, "hollow");
                break;
            case "trunk":
                canvas.Box(cells.Left(i), middle - (height / 2) - 2, cells.Width(i), height + 4, "ink");
                break;
            default:
                break;
        }
        if (element.Kind == "connection") Place(canvas, element, i);
        else Words(canvas, element, i);
        if (element.Loss is { Value: > 0 } loss)
            canvas.Text(x, wordsY + (6 * LineStep), Numerals.Plain(Math.Round(loss.Value, 3)), "small mid");
    }

    /// <summary>Where a pair mates stands above it, every second one higher where several follow one another.</summary>
    private void Place(Canvas canvas, PathElement element, int i)
    {
        var raised = 0;
        for (var before = i - 1; before >= 0 && path.Elements[before].Kind == "connection"; before--) raised ^= 1;
        var y = strands.Middle - (strands.Height / 2) - 17 - (raised * 2 * LineStep);
        canvas.Text(cells.Middle(i), y, element.Id, "tiny mid");
        canvas.Text(cells.Middle(i), y + 11, element.Position, "tiny soft mid");
    }

    private void Words(Canvas canvas, PathElement element, int i)
    {
        var (x, room, y) = (cells.Middle(i), cells.Width(i) - 3, wordsY);
        canvas.Text(x, y, element.Kind, "head bold mid");
        foreach (var line in TextFit.Lines(element.Id, room, TinySize, 2)) canvas.Text(x, y += LineStep, line, "tiny mid");
        foreach (var line in TextFit.Lines(element.Position, room, TinySize, 3)) canvas.Text(x, y += LineStep, line, "tiny soft mid");
    }

    private void Stair(Canvas canvas)
    {
        var most = Math.Max(path.Allowed ?? 0, path.Loss?.Value ?? 0) * 1.05;
        if (most <= 0) return;
        double At(double loss) => stairTop + (loss / most * StairHeight);
        canvas.Text(Sheet.Margin, stairTop - 8, "loss so far, dB", "small soft");
        canvas.Line(Sheet.Margin, stairTop, Sheet.Width - Sheet.Margin, stairTop, "faint");
        var sum = 0.0;
        var line = PathText.Of($"M{Sheet.Margin} {stairTop}");
        for (var i = 0; i < path.Elements.Length; i++)
        {
            var before = sum;
            sum += path.Elements[i].Loss?.Value ?? 0;
            var isLong = path.Elements[i].Kind is "trunk" or "cord";
            line += isLong
                ? PathText.Of($"H{cells.Left(i)}L{cells.Right(i)} {At(sum)}")
                : PathText.Of($"H{cells.Middle(i)}V{At(sum)}");
            if (sum - before > 0 && !isLong)
                canvas.Text(cells.Middle(i) + 5, At(sum) - 4, Numerals.Fixed(sum, 2), "tiny soft halo");
        }
        canvas.Path(line + PathText.Of($"H{Sheet.Width - Sheet.Margin}"), "heavy");
        if (path.Allowed is not { } allowed) return;
        canvas.Line(Sheet.Margin, At(allowed), Sheet.Width - Sheet.Margin, At(allowed), "act");
        canvas.Text(Sheet.Width - Sheet.Margin, At(allowed) - 5, $"allowed {Numerals.Fixed(allowed, 2)} dB", "small alert end halo");
    }

    private string Description()
    {
        ImmutableArray<string> words = [.. path.Elements.Select(e => $"{e.Kind} {e.Id} {e.Position}".TrimEnd())];
        ImmutableArray<string> fibres = [.. path.Fibres.Select(f => $"{FibreWords.Start(f)} arrives at {FibreWords.End(f)}")];
        return string.Join(", ", words) + ". " + (fibres.IsEmpty ? "" : string.Join(", ", fibres) + ".");
    }
}
