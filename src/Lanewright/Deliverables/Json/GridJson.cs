using System.Collections.Immutable;
using Lanewright.Engineering.Lines;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Deliverables.Json;

/// <summary>Channel plans as JSON.</summary>
public static class GridJson
{
    /// <summary>A dense plan, highest frequency first as plans are printed.</summary>
    public static void Write(FrequencyGrid grid, ChannelPlan plan, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("grid", "DWDM");
        writer.Number("spacingGhz", plan.Spacing.Gigahertz);
        writer.Number("stepGhz", plan.Step.Gigahertz);
        writer.WriteStartArray("channels");
        for (var i = plan.Channels.Length - 1; i >= 0; i--)
        {
            writer.WriteStartObject();
            writer.WriteNumber("n", plan.Number(grid, i));
            writer.Number("frequencyThz", plan.Channels[i].Terahertz);
            writer.Number("wavelengthNm", plan.Channels[i].Wavelength.Nanometres);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    });

    /// <summary>The coarse plan.</summary>
    public static void Write(ImmutableArray<Wavelength> coarse, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("grid", "CWDM");
        writer.WriteStartArray("channels");
        for (var i = 0; i < coarse.Length; i++)
        {
            writer.WriteStartObject();
            writer.WriteNumber("n", i);
            writer.Number("frequencyThz", Frequency.Of(coarse[i]).Terahertz);
            writer.Number("wavelengthNm", coarse[i].Nanometres);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
        writer.WriteEndObject();
    });
}
