using System.Text.Json;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Text;

namespace Lanewright.Deliverables.Json;

/// <summary>An answer about a line as JSON.</summary>
public static class LineJson
{
    /// <summary>Writes one answer as a document.</summary>
    public static void Write(LineAnswer answer, Catalogue catalogue, string currency, LineSweep? sweep, Stream stream) => JsonText.Write(
        stream, writer =>
    {
        writer.WriteStartObject();
        WriteKeys(writer, answer, catalogue, currency, answer.Design.Verdict);
        if (sweep is not null) Sweep(writer, sweep);
        writer.WriteEndObject();
    });

    /// <summary>Writes the keys of an answer into an object that is open, with the verdict on all that it stands for.</summary>
    public static void WriteKeys(Utf8JsonWriter writer, LineAnswer answer, Catalogue catalogue, string currency, Verdict verdict)
    {
        var design = answer.Design;
        writer.WriteString("verdict", Checks.Word(verdict));
        writer.WriteString("mark", Marks.Name(design.Mark));
        writer.WriteString("scheme", LineWords.Name(design.Scheme));
        writer.WriteString("type", design.TypeName);
        writer.Number("lengthKm", answer.Question.Length.Kilometres);
        writer.Number("spanLossDb", answer.Question.SpanLoss.Value);
        writer.Number("spacingGhz", answer.Question.Channels.Spacing.Gigahertz);
        writer.WriteString("spacingWhy", answer.Question.SpacingWhy);
        writer.Number("launchDbm", design.Launch?.Dbm);
        writer.Number("launchTiltDb", design.LaunchTilt.Value);
        writer.Number("totalLaunchDbm", design.Total?.Dbm);
        writer.Number("ramanTiltDb", design.RamanTilt.Value);
        writer.WriteString("tightestCheck", design.Tightest?.Name);
        writer.Number("tightestMarginDb", design.Tightest?.Margin);
        writer.WriteStartArray("channels");
        var limit = answer.Question.Standards.Wavelength(design.TypeName)?.ErrorLimit?.Value;
        foreach (var channel in design.Channels) Channel(writer, channel, limit);
        writer.WriteEndArray();
        writer.WriteString("expectedMarginNote", LineSpanWords.OfExpected(design));
        ChecksJson.Write(writer, "checks", design.Checks);
        writer.Number("latencyUs", design.Latency?.Value.Nanoseconds / 1000);
        writer.WriteStartArray("tried");
        foreach (var tried in answer.Tried)
        {
            writer.WriteStartObject();
            writer.WriteString("scheme", LineWords.Name(tried.Scheme));
            writer.WriteString("verdict", Checks.Word(tried.Verdict));
            writer.WriteString("reason", tried.Reason);
            LinePriceJson.Total(writer, tried.Price);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        LinePriceJson.Write(writer, answer.Price, currency);
        Built(writer, design);
        writer.WriteString("hazardHint", LineCautions.Hint(design, answer.Question.Standards));
        writer.WriteString("caution", LineCautions.Short);
        Advice(writer, answer, catalogue);
    }

    private static void Channel(Utf8JsonWriter writer, LineChannel channel, double? limit)
    {
        writer.WriteStartObject();
        writer.Number("frequencyThz", channel.Frequency.Terahertz);
        writer.Number("wavelengthNm", channel.Frequency.Wavelength.Nanometres);
        writer.Number("rxPowerDbm", channel.Received?.Dbm);
        writer.Number("osnrDb", channel.Osnr?.Value);
        writer.Number("gsnrDb", channel.Gsnr?.Value);
        writer.Number("gsnrIn12_5GhzDb", channel.GsnrInReference?.Value);
        writer.Number("nonlinearOsnrDb", channel.OverNonlinear?.Value);
        writer.Number("requiredOsnrDb", channel.Required?.Value);
        writer.Number("penaltyDb", channel.Penalty.Value);
        writer.Number("marginDb", channel.Margin?.Value);
        writer.Number("expectedMarginDb", channel.ExpectedMargin?.Value);
        writer.Number("dispersionPsNm", channel.Dispersion?.PicosecondsPerNanometre);
        writer.Share("preFecErrorLimit", limit);
        writer.Share("preFecErrorRatio", channel.ErrorsBeforeCode);
        writer.Number("fecMarginDb", channel.CodeMargin?.Value);
        writer.Number("overShannonDb", channel.OverShannon?.Value);
        writer.WriteEndObject();
    }

    private static void Built(Utf8JsonWriter writer, LineDesign design)
    {
        writer.WriteStartArray("amplifiers");
        foreach (var amplifier in design.Amplifiers)
        {
            writer.WriteStartObject();
            writer.WriteString("place", amplifier.Place);
            writer.WriteString("model", amplifier.Model.Name);
            writer.Number("inputDbm", amplifier.Input.Dbm);
            writer.Number("outputDbm", amplifier.Output.Dbm);
            writer.Number("gainDb", amplifier.Gain.Value);
            writer.Number("padDb", amplifier.Pad.Value);
            writer.Number("padBeforeDb", amplifier.PadBefore.Value);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.Number("receiverPadDb", design.ReceiverPad.Value);
        writer.WriteStartArray("stages");
        foreach (var stage in design.Stages)
        {
            writer.WriteStartObject();
            writer.WriteString("at", stage.What);
            writer.Number("km", stage.At.Kilometres);
            writer.Number("powerDbm", stage.Level.Dbm);
            writer.Number("overNoiseDb", stage.OverNoise?.Value);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    private static void Advice(Utf8JsonWriter writer, LineAnswer answer, Catalogue catalogue)
    {
        writer.WritePropertyName("headroom");
        if (LineHeadroom.Of(answer) is { } headroom)
        {
            writer.WriteStartObject();
            writer.WriteNumber("mostChannels", headroom.MostChannels);
            writer.Number("spacingGhz", answer.Question.Channels.Spacing.Gigahertz);
            writer.WriteStartArray("higherRates");
            foreach (var higher in headroom.HigherRates)
            {
                writer.WriteStartObject();
                writer.WriteString("type", higher.TypeName);
                writer.WriteNumber("channels", higher.Channels);
                writer.Number("spacingGhz", higher.Spacing.Gigahertz);
                writer.WriteString("scheme", LineWords.Name(answer.Design.Scheme));
                writer.WriteString("verdict", Checks.Word(higher.Verdict));
                writer.WriteEndObject();
            }
            writer.WriteEndArray();
            writer.WriteEndObject();
        }
        else writer.WriteNullValue();
        writer.WriteStartArray("changes");
        var changes = LineChange.Of(answer, catalogue);
        foreach (var change in changes)
        {
            writer.WriteStartObject();
            writer.WriteString("change", change.What);
            writer.Number("gainedDb", change.Gained.Value);
            writer.Number("cost", (double?)change.Cost?.Units);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteString("mostMarginPerCost", LineChange.BestBuy(changes)?.What);
    }

    /// <summary>Writes a sweep into an object that is open.</summary>
    public static void Sweep(Utf8JsonWriter writer, LineSweep sweep)
    {
        writer.WriteStartObject("sweep");
        writer.WriteString("quantity", sweep.Quantity);
        writer.WriteString("unit", sweep.Unit);
        writer.WriteString("marginOf", sweep.Of);
        writer.WriteString("whyNone", sweep.WhyNone);
        writer.WriteStartArray("points");
        foreach (var (value, margin, verdict, failing) in sweep.Points)
        {
            writer.WriteStartObject();
            writer.Number("value", value);
            writer.Number("marginDb", margin);
            writer.WriteString("verdict", Checks.Word(verdict));
            writer.WriteString("failing", failing);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    }
}
