using System.Text.Json;
using Lanewright.Engineering.Heat;
using Lanewright.Engineering.Pathways;
using Lanewright.Engineering.Power;
using Lanewright.Engineering.Reliability;
using Lanewright.Model;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Deliverables.Json;

/// <summary>Answers about trays, spares and feeds without a plan, as JSON.</summary>
public static class ReckoningJson
{
    /// <summary>Writes what a tray or a duct takes.</summary>
    public static void Write(CableRoom room, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("kind", room.IsDuct ? "duct" : "tray");
        writer.Number("areaMm2", room.SquareMillimetres);
        writer.Number("cableMm2", SegmentFill.Round(room.Cable));
        writer.WriteNumber("cables", room.Cables);
        writer.Number("fill", room.Fill.Value);
        Limit(writer, "planned", room.Planned);
        Limit(writer, "most", room.Most);
        if (room.Planned is { } planned) writer.WriteNumber("cablesPlanned", room.CablesAt(planned.Value));
        else writer.WriteNull("cablesPlanned");
        writer.WriteNumber("cablesAtMost", room.AtMost);
        writer.Number("areaPlannedMm2", room.Planned is { } share ? room.WantedFor(share.Value) : null);
        writer.Number("areaAtMostMm2", room.WantedFor(room.Most.Value));
        writer.Number("jamRatio", room.Jam);
        writer.WriteBoolean("mayJam", room.Jam is { } jam && JamRatio.MayJam(jam, room.Standards));
        writer.WriteBoolean("holds", room.Holds);
        writer.WriteEndObject();
    });

    /// <summary>Writes how many spares last.</summary>
    public static void Write(SpareAnswer answer, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteNumber("units", answer.Units);
        writer.Number("fit", answer.Each.Fit);
        writer.Number("perYearEach", answer.Each.PerYear);
        writer.Number("perYear", answer.PerYear);
        writer.Number("expectedUntilResupply", answer.Expected);
        writer.Number("level", answer.Level.Value);
        Spares(writer, "spareOnShelf", answer, SpareCount.OneOnShelf);
        Spares(writer, "neverShort", answer, SpareCount.NeverShort);
        if (answer.Needed is { } needed) writer.WriteNumber("needed", needed);
        else writer.WriteNull("needed");
        writer.Number("up", answer.Needed is null ? null : answer.Up.Value);
        if (answer.EnoughUp is { } enough) writer.WriteNumber("enoughUp", Math.Round(enough.Value, UpDigits));
        else writer.WriteNull("enoughUp");
        writer.WriteEndObject();
    });

    /// <summary>Writes what a load on feeds comes to.</summary>
    public static void Write(FeedAnswer answer, InletLimits? inlet, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.Number("loadWatts", answer.Load.Value);
        writer.Number("amperes", answer.Normal.Value);
        writer.Number("amperesAfterLoss", answer.AfterLoss?.Value);
        writer.Number("limitAmperes", answer.Limit.Value);
        writer.Number("leastBreakerAmperes", answer.LeastBreaker.Value);
        writer.WriteBoolean("bears", answer.Bears);
        writer.Number("btuAnHour", AirStream.BtuAnHour(answer.Load));
        writer.Number("airDensityKgM3", answer.Density);
        writer.Number("airCubicMetresAnHour", answer.Air);
        writer.Number("airCubicFeetAMinute", AirStream.CubicFeetAMinute(answer.Air));
        writer.Number("inletAllowableHighC", inlet?.AllowableHigh.Value.Celsius);
        writer.WriteEndObject();
    });

    /// <summary>Shares of time close to all of it differ in late digits.</summary>
    private const int UpDigits = 12;

    private static void Spares(Utf8JsonWriter writer, string name, SpareAnswer answer, SpareCount count)
    {
        var spares = answer.Spares(count);
        writer.WriteStartObject(name);
        writer.WriteNumber("spares", spares);
        writer.Number("reaches", answer.Reached(spares, count).Value);
        writer.WriteEndObject();
    }

    private static void Limit(Utf8JsonWriter writer, string name, Known<double>? limit)
    {
        if (limit is not { } known)
        {
            writer.WriteNull(name);
            return;
        }
        writer.WriteStartObject(name);
        writer.Number("fill", known.Value);
        writer.WriteString("source", known.Source.ToString());
        writer.WriteString("mark", Marks.Name(known.Source.Mark));
        writer.WriteEndObject();
    }
}
