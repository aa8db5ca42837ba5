using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Standards;

/// <summary>A module and the cage that takes it.</summary>
public sealed class FormFactor
{
    /// <summary>Reads a form factor from its rows.</summary>
    public FormFactor(FactSheet sheet)
    {
        Sheet = sheet;
        Lanes = sheet.Whole("lanes", 1);
        LaneBaudMax = sheet.Baud("lane-baud-max")?.Value ?? default;
        Modulations = [.. sheet.Words("modulation").Select(LaneSignal.ReadModulation)];
        Accepts = sheet.Words("accepts");
        AcceptsByAdapter = sheet.Words("accepts-by-adapter");
    }

    /// <summary>All rows.</summary>
    public FactSheet Sheet { get; }

    /// <summary>The name, such as <c>QSFP-DD</c>.</summary>
    public string Name => Sheet.Subject;

    /// <summary>Electrical lanes in each direction.</summary>
    public int Lanes { get; }

    /// <summary>The fastest lane its contacts are made for.</summary>
    public Baud LaneBaudMax { get; }

    /// <summary>Modulations its modules speak to their hosts.</summary>
    public ImmutableArray<Modulation> Modulations { get; }

    /// <summary>Bits per second of its fastest lane.</summary>
    public long LaneBitsMax => Modulations.Select(m => new LaneSignal(LaneBaudMax, m).BitsPerSecond).DefaultIfEmpty(0).Max();

    /// <summary>Modules its cage takes as they are.</summary>
    public ImmutableArray<string> Accepts { get; }

    /// <summary>Modules its cage takes through an adapter.</summary>
    public ImmutableArray<string> AcceptsByAdapter { get; }

    /// <summary>Where the mechanical fit is defined.</summary>
    public Citation Definition => Sheet.SourceOf("accepts");

    /// <summary>Whether a module in this body speaks such lanes to its host.</summary>
    public bool Speaks(LaneSignal signal) => signal.Baud <= LaneBaudMax && Modulations.Contains(signal.Modulation);

    /// <summary>Whether wire in this body carries such lanes: what is made for four levels carries two as well.</summary>
    public bool Carries(LaneSignal signal) =>
        signal.Baud <= LaneBaudMax && (signal.Modulation == Modulation.Nrz || Modulations.Contains(signal.Modulation));

    /// <summary>The class whose modules draw what they declare, whatever that is; null when there is none or it is not known.</summary>
    public Known<double>? OpenPowerClass => Sheet.Real("power-class-open");

    /// <summary>The most a module of a power class draws, or null when the table does not say.</summary>
    public Known<Watts>? PowerOfClass(int powerClass) =>
        Sheet.Real("power-class-" + Numerals.Whole(powerClass))?.As(Watts.From);
}
