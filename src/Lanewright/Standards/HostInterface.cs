using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Standards;

/// <summary>The electrical interface between a port's silicon and a module.</summary>
public sealed class HostInterface
{
    /// <summary>What <see cref="Fec"/> says when the media type decides.</summary>
    public const string FecOfMedia = "per-type";

    /// <summary>Reads an interface from its rows.</summary>
    public HostInterface(FactSheet sheet)
    {
        Sheet = sheet;
        Lanes = sheet.Whole("lanes", 1);
        Signal = new LaneSignal(sheet.Baud("baud")?.Value ?? default, LaneSignal.ReadModulation(sheet.Word("modulation")));
        Rate = sheet.Rate("rate");
        Fec = sheet.Word("fec");
    }

    /// <summary>All rows.</summary>
    public FactSheet Sheet { get; }

    /// <summary>The name, such as <c>400GAUI-8</c>.</summary>
    public string Name => Sheet.Subject;

    /// <summary>Electrical lanes in each direction.</summary>
    public int Lanes { get; }

    /// <summary>What a lane carries.</summary>
    public LaneSignal Signal { get; }

    /// <summary>The rate of the MAC it serves.</summary>
    public BitRate Rate { get; }

    /// <summary>The code the host puts on it, or <see cref="FecOfMedia"/>.</summary>
    public string Fec { get; }

    /// <summary>Where it is defined.</summary>
    public Citation Definition => Sheet.SourceOf("lanes");
}
