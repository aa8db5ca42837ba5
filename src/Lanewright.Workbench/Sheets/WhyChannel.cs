using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Lines;
using Lanewright.Engineering.Lines;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>The margin of a channel of a line: the noise it meets, what its receiver needs, and what is left.</summary>
internal static class WhyChannel
{
    private const double Parts = 1e6;

    /// <summary>The name of a channel's derivation.</summary>
    public static string Name(int line, int route, int channel) =>
        $"channel/{Identifiers.Line(line, route)}/{Numerals.Whole(channel + 1)}";

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper, DesignedPlan designed, string thing)
    {
        var parts = thing.Split('/');
        if (LineDrawingSet.SheetOf(designed, parts[0]) is not { } sheet || parts.Length < 2
            || !Numerals.TryWhole(parts[1], out var number) || number < 1 || number > sheet.Design.Channels.Length)
            return paper.Unknown("Channel of a line", $"There is no channel '{thing}'.");
        var channel = sheet.Design.Channels[(int)number - 1];
        paper.Heading($"Margin at {Numerals.Plain(Math.Round(channel.Frequency.Terahertz, 5))} THz",
            $"{sheet.Words}, {LineWords.Name(sheet.Design.Scheme)}, {sheet.Design.TypeName}");
        Noise(paper, channel);
        Stages(paper, sheet.Design);
        if (sheet.Design.Stages.Length > 1) paper.Figure(() => new PowerDrawing(sheet).Write(paper.Markup, isFile: false));
        return true;
    }

    private static void Noise(SheetPaper paper, LineChannel channel)
    {
        const string caption = "signal over noise in the reference width; ratios of noise add, decibels do not";
        var table = PaperTable.OpenNarrow(paper.Markup, caption, "", "#dB", "#noise, millionths of the signal");
        Noise(table, "over the noise of all amplifiers", channel.Osnr);
        Noise(table, "over nonlinear noise of the fibre", channel.OverNonlinear);
        var known = Ratio(channel.Osnr) + Ratio(channel.OverNonlinear);
        if (channel.GsnrInReference is { } all && Ratio(all) - known > Ratio(all) / 1000)
            Noise(table, "over the noise of the transmitter and what else counts", Decibels.OfRatio(1 / (Ratio(all) - known)));
        Noise(table, "over all noise", channel.GsnrInReference);
        table.Row("penalties of the type", Fixed(-channel.Penalty.Value), "");
        if (channel.Required is { } required) table.Row("what the receiver needs", Fixed(-required.Value), "");
        table.Row("sum", ["margin", channel.Margin is { } margin ? Fixed(margin.Value) : "not known", ""]);
        table.Close();
    }

    private static void Noise(PaperTable table, string name, Decibels? over)
    {
        if (over is { } value)
            table.Row(name, Fixed(value.Value), Numerals.Fixed(Ratio(value) * Parts, 1));
    }

    private static double Ratio(Decibels? over) => over is { } value ? 1 / value.Ratio : 0;

    private static void Stages(SheetPaper paper, LineDesign design)
    {
        if (design.Stages.IsEmpty) return;
        var table = PaperTable.OpenNarrow(paper.Markup, "the way of the channel with the least margin", "after", "#km", "#dBm",
            "#dB over all noise so far");
        foreach (var stage in design.Stages)
            table.Row(new Entry(stage.What, paper.Now.Places?.Of(stage.What) is { } place ? paper.Site.To(place.Page) : ""),
                Numerals.Fixed(stage.At.Kilometres, 2), Fixed(stage.Level.Dbm), stage.OverNoise is { } over ? Fixed(over.Value) : "");
        table.Close();
    }

    private static string Fixed(double value) => Numerals.Fixed(value, 2);
}
