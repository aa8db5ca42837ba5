using Lanewright.Engineering.Lines;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Bench;

/// <summary>Designs of lines between sites: the best launch and every channel's margin, over channels and over spans.</summary>
internal static class LineBench
{
    private const int Designs = 2000;
    private const int Runs = 3;

    /// <summary>Prints designs a second, and how they grow.</summary>
    public static void Run()
    {
        Console.WriteLine();
        Console.WriteLine($"lines between sites: {Numerals.Whole(Designs)} designs each, with the best launch");
        (int Channels, int Spans)[] all = [(16, 1), (32, 1), (64, 1), (128, 1), (64, 2), (64, 4), (64, 8)];
        // What is compiled on the way is no growth: code is compiled once more for what was met in it, some time after it ran often.
        for (var round = 0; round < Runs; round++)
            foreach (var (channels, spans) in all) Parallel.For(0, Designs, i => Design(i, channels, spans));
        foreach (var (channels, spans) in all)
            Report($"{Numerals.Whole(channels)} channels, {Numerals.Whole(spans)} {(spans == 1 ? "span" : "spans")}", channels, spans);
    }

    private static void Report(string what, int channels, int spans)
    {
        var (wall, processors) = Clock.Both(Runs, () => Parallel.For(0, Designs, i => Design(i, channels, spans)));
        Console.WriteLine($"  {what}: {Numerals.Fixed(wall, 0)} ms, {Numerals.Grouped((decimal)(Designs / wall * 1000))} a second; "
            + $"{Numerals.Fixed(processors * 1000 / Designs, 0)} us of processors a design");
    }

    private static void Design(int number, int channels, int spans)
    {
        var standards = StandardsLibrary.Shipped;
        var type = standards.Wavelength("400ZR") ?? throw new InvalidOperationException();
        var spacing = Frequency.FromGigahertz(channels > 64 ? 37.5 : 75);
        var span = new LineSpan
        {
            Fibre = standards.LineFibre("G.652.D") ?? throw new InvalidOperationException(),
            Length = Length.FromKilometres(60 + (number % 41)),
            Attenuation = new Known<Attenuation>(Attenuation.FromDecibelsPerKilometre(0.22), Citation.OfPlan),
            ConnectorLoss = new Known<Decibels>(Decibels.From(0.3), Citation.OfPlan),
            SpliceLoss = new Known<Decibels>(Decibels.From(0.1), Citation.OfPlan),
        };
        var question = new LineQuestion
        {
            Standards = standards,
            Type = type,
            Rate = type.Rate,
            Channels = ChannelPlan.Middle(standards.Grid, spacing, channels) ?? throw new InvalidOperationException(),
            Spans = [.. Enumerable.Repeat(span, spans)],
            Equipment = LineEquipment.Usual(standards),
        };
        var made = CoherentLine.Of(question, type, spans > 1 ? LineScheme.InLine : LineScheme.BoosterAndPreamplifier);
        if (made.Channels.Length != channels) throw new InvalidOperationException();
    }
}
