using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Standards;

/// <summary>An optical interface type (an IEEE PMD or an MSA type) with its limits. A limit that is null is not known.</summary>
public sealed class InterfaceType
{
    private readonly FactSheet sheet;

    /// <summary>Reads a type from its rows.</summary>
    public InterfaceType(FactSheet sheet)
    {
        this.sheet = sheet;
        Rate = sheet.Rate("rate");
        MediaLanes = sheet.Whole("media-lanes", 1);
        WavelengthsPerFibre = sheet.Whole("wavelengths-per-fibre", 1);
        Fibres = sheet.Whole("fibres", 2);
        var baud = sheet.Baud("baud");
        Baud = baud;
        Signal = new LaneSignal(baud?.Value ?? default, LaneSignal.ReadModulation(sheet.Word("modulation")));
        FibreKind = sheet.Word("fibre") == "MMF" ? FibreKind.MultiMode : FibreKind.SingleMode;
        Fec = sheet.Word("fec");
        CodesDeployed = sheet.Words("fec-deployed");
        CodeMadeBehind = sheet.Words("code-made-behind");
        Lanes = ReadLanes(sheet.Word("wavelengths"));
    }

    /// <summary>The name, such as <c>400GBASE-DR4</c>.</summary>
    public string Name => sheet.Subject;

    /// <summary>All rows.</summary>
    public FactSheet Sheet => sheet;

    /// <summary>Whether the document was a draft when its values were taken.</summary>
    public bool IsDraft => sheet.Word("status") == "draft";

    /// <summary>The rate of the MAC.</summary>
    public BitRate Rate { get; }

    /// <summary>Optical lanes in each direction.</summary>
    public int MediaLanes { get; }

    /// <summary>Wavelengths on one fibre in one direction.</summary>
    public int WavelengthsPerFibre { get; }

    /// <summary>Fibres for both directions.</summary>
    public int Fibres { get; }

    /// <summary>Symbols per second on a lane, with its source.</summary>
    public Known<Baud>? Baud { get; }

    /// <summary>What a lane carries.</summary>
    public LaneSignal Signal { get; }

    /// <summary>The family of glass it runs on.</summary>
    public FibreKind FibreKind { get; }

    /// <summary>The code that must be on the wire.</summary>
    public string Fec { get; }

    /// <summary>Codes that ports of this type are also run with, outside its standard, strongest first.</summary>
    public ImmutableArray<string> CodesDeployed { get; }

    /// <summary>Host interfaces behind which modules of this type end the host's code and make that of the wire themselves.</summary>
    public ImmutableArray<string> CodeMadeBehind { get; }

    /// <summary>The windows of its wavelengths, shortest first; empty for a tunable type.</summary>
    public ImmutableArray<WavelengthRange> Lanes { get; }

    /// <summary>The opening of the module: <c>LC-duplex</c>, <c>MPO-12</c> and so on.</summary>
    public string Connector => sheet.Word("connector");

    /// <summary>Polish of the opening: PC or APC; empty when not known.</summary>
    public string Polish => sheet.Word("polish");

    /// <summary>Whether each wavelength runs both ways on one fibre pair, so that a pair cannot be told apart by direction.</summary>
    public bool IsBidirectional => WavelengthsPerFibre == 2 && Fibres == MediaLanes;

    /// <summary>Pairs of fibres.</summary>
    public int FibrePairs => Math.Max(1, Fibres / 2);

    /// <summary>Shortest link.</summary>
    public Known<Length>? LengthMin => sheet.Length("length-min");

    /// <summary>Longest link on a medium, worst-case fibre.</summary>
    public Known<Length>? Reach(Fibre fibre) => sheet.Length("reach-" + fibre.LimitColumn);

    /// <summary>Longest link on single mode when its measured loss stays inside <see cref="LossMaxEngineered"/>.</summary>
    public Known<Length>? ReachEngineered => sheet.Length("reach-os2-engineered");

    /// <summary>Largest channel insertion loss on a medium.</summary>
    public Known<Decibels>? LossMax(Fibre fibre) => sheet.Decibels("loss-max-" + fibre.LimitColumn);

    /// <summary>Largest channel insertion loss at the engineered reach.</summary>
    public Known<Decibels>? LossMaxEngineered => sheet.Decibels("loss-max-os2-engineered");

    /// <summary>Fibre attenuation this type reckons with on multimode, or null when the medium's own holds.</summary>
    public Known<Attenuation>? FibreAttenuation => sheet.Real("fibre-attenuation")?.As(Attenuation.FromDecibelsPerKilometre);

    /// <summary>Highest average power a lane may launch.</summary>
    public Known<PowerLevel>? TxAverageMax => sheet.Level("tx-average-max");

    /// <summary>Attenuation the strongest transmitter of the type needs before a receiver of the type.</summary>
    public Known<Decibels>? OverloadAttenuation => sheet.Decibels("overload-attenuation");

    /// <summary>Highest launch in OMA.</summary>
    public Known<PowerLevel>? TxOmaMax => sheet.Level("tx-oma-max");

    /// <summary>Lowest average power a lane may launch (informative).</summary>
    public Known<PowerLevel>? TxAverageMin => sheet.Level("tx-average-min");

    /// <summary>Lowest launch in OMA less the transmitter penalty.</summary>
    public Known<PowerLevel>? TxOmaMinusPenaltyMin => sheet.Level("tx-oma-minus-penalty-min");

    /// <summary>Largest transmitter penalty.</summary>
    public Known<Decibels>? TxPenaltyMax => sheet.Decibels("tx-penalty-max");

    /// <summary>Smallest extinction ratio.</summary>
    public Known<Decibels>? ExtinctionRatioMin => sheet.Decibels("extinction-ratio-min");

    /// <summary>Average power above which a receiver may be destroyed.</summary>
    public Known<PowerLevel>? RxDamage => sheet.Level("rx-damage");

    /// <summary>Highest average power a receiver must still work with.</summary>
    public Known<PowerLevel>? RxAverageMax => sheet.Level("rx-average-max");

    /// <summary>Highest OMA a receiver must still work with.</summary>
    public Known<PowerLevel>? RxOmaMax => sheet.Level("rx-oma-max");

    /// <summary>Unstressed sensitivity in OMA.</summary>
    public Known<PowerLevel>? RxSensitivity => sheet.Level("rx-sensitivity");

    /// <summary>Stressed sensitivity in OMA, the normative receiver test.</summary>
    public Known<PowerLevel>? RxStressedSensitivity => sheet.Level("rx-stressed-sensitivity");

    /// <summary>The part of the budget kept for penalties on a medium.</summary>
    public Known<Decibels>? Penalties(Fibre fibre) => sheet.Decibels("penalties") ?? sheet.Decibels("penalties-" + fibre.LimitColumn);

    /// <summary>Largest dispersion.</summary>
    public Known<Dispersion>? DispersionMax => sheet.Real("dispersion-max")?.As(Dispersion.FromPicosecondsPerNanometre);

    /// <summary>Smallest (most negative) dispersion.</summary>
    public Known<Dispersion>? DispersionMin => sheet.Real("dispersion-min")?.As(Dispersion.FromPicosecondsPerNanometre);

    /// <summary>Largest differential group delay.</summary>
    public Known<Duration>? DgdMax => sheet.Real("dgd-max")?.As(Duration.FromPicoseconds);

    /// <summary>Smallest return loss of the whole channel.</summary>
    public Known<Decibels>? ChannelReturnLossMin => sheet.Decibels("channel-return-loss-min");

    /// <summary>Which rule of reflections holds; null when none is known.</summary>
    public Known<string>? ReflectanceRule => sheet.Text("reflectance-rule");

    /// <summary>Where the type itself is defined.</summary>
    public Citation Definition => sheet["rate"]?.Source
        ?? new Citation(sheet.Word("standard"), sheet.Word("clause"), sheet.Word("year"), Mark.Memory);

    private static ImmutableArray<WavelengthRange> ReadLanes(string text)
    {
        var lanes = ImmutableArray.CreateBuilder<WavelengthRange>();
        foreach (var part in text.Split('|', StringSplitOptions.RemoveEmptyEntries))
        {
            var ends = part.Split('-');
            if (ends.Length == 2 && Numerals.TryReal(ends[0], out var from) && Numerals.TryReal(ends[1], out var to))
                lanes.Add(new WavelengthRange(Wavelength.FromNanometres(from), Wavelength.FromNanometres(to)));
        }
        return lanes.ToImmutable();
    }
}
