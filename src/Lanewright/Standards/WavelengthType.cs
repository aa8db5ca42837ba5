using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Standards;

/// <summary>An interface type made for one wavelength of a line, coherent or direct, with its limits. A limit that is null is not
/// known.</summary>
public sealed class WavelengthType(FactSheet sheet)
{
    /// <summary>All rows.</summary>
    public FactSheet Sheet { get; } = sheet;

    /// <summary>The name, such as <c>400ZR</c>.</summary>
    public string Name => Sheet.Subject;

    /// <summary>Whether the receiver is coherent.</summary>
    public bool IsCoherent { get; } = sheet.Word("detection") == "coherent";

    /// <summary>Whether its wavelengths lie on the coarse grid; a dense one otherwise.</summary>
    public bool IsCoarse { get; } = sheet.Word("grid") == "CWDM";

    /// <summary>The rate it carries.</summary>
    public BitRate Rate { get; } = sheet.Rate("rate");

    /// <summary>Symbols a second.</summary>
    public Known<Baud>? Baud { get; } = sheet.Baud("baud");

    /// <summary>The set of symbols, such as <c>16QAM</c>.</summary>
    public string Modulation { get; } = sheet.Word("modulation");

    /// <summary>The code that corrects errors.</summary>
    public string Code { get; } = sheet.Word("code");

    /// <summary>Share of wrong bits that the code still corrects.</summary>
    public Known<double>? ErrorLimit { get; } = sheet.Real("error-limit");

    /// <summary>Signal over noise in the reference width that a receiver needs.</summary>
    public Known<Decibels>? RequiredOsnr { get; } = sheet.Decibels("osnr-min");

    /// <summary>Signal over noise that the transmitter itself has.</summary>
    public Known<Decibels>? TransmitterOsnr { get; } = sheet.Decibels("tx-osnr-min");

    /// <summary>Lowest launch.</summary>
    public Known<PowerLevel>? TxMin { get; } = sheet.Level("tx-min");

    /// <summary>Highest launch.</summary>
    public Known<PowerLevel>? TxMax { get; } = sheet.Level("tx-max");

    /// <summary>The most that a transmitter sends; null where nobody says.</summary>
    /// <param name="weakest">What is stated of the weakest, above which the strongest lies in any case.</param>
    public PowerLevel? StrongestOf(PowerLevel? weakest) =>
        TxMax is { } most ? PowerLevel.Max(most.Value, weakest ?? most.Value) : null;

    /// <summary>Penalties of low receive power.</summary>
    public PenaltySteps RxPenalties { get; } = PenaltySteps.Read(sheet, "rx-penalty@", isFloor: true);

    /// <summary>Lowest receive power.</summary>
    public Known<PowerLevel>? RxMin => Sheet.Level("rx-min") ?? RxPenalties.Last?.As(PowerLevel.FromDbm);

    /// <summary>Highest receive power.</summary>
    public Known<PowerLevel>? RxMax { get; } = sheet.Level("rx-max");

    /// <summary>Lowest receive power where the signal over noise is at least <see cref="HighOsnr"/>.</summary>
    public Known<PowerLevel>? RxMinAtHighOsnr { get; } = sheet.Level("rx-min-high-osnr");

    /// <summary>Signal over noise from which the lower floor of receive power holds.</summary>
    public Known<Decibels>? HighOsnr { get; } = sheet.Decibels("high-osnr");

    /// <summary>Largest loss of a single channel without amplifiers, where the type has such an application.</summary>
    public Known<Decibels>? UnamplifiedLossMax { get; } = sheet.Decibels("loss-max-unamplified");

    /// <summary>Penalties of dispersion in ps/nm.</summary>
    public PenaltySteps DispersionPenalties { get; } = PenaltySteps.Read(sheet, "dispersion-penalty@");

    /// <summary>Largest dispersion in ps/nm.</summary>
    public Known<double>? DispersionMax => Sheet.Real("dispersion-max") ?? DispersionPenalties.Last;

    /// <summary>Penalties of mean polarisation-mode dispersion in ps.</summary>
    public PenaltySteps PmdPenalties { get; } = PenaltySteps.Read(sheet, "pmd-penalty@");

    /// <summary>Largest mean polarisation-mode dispersion in ps.</summary>
    public Known<double>? PmdMax => Sheet.Real("pmd-max") ?? PmdPenalties.Last;

    /// <summary>Largest differential group delay at any time, in ps.</summary>
    public Known<double>? DgdMax { get; } = sheet.Real("dgd-max");

    /// <summary>Penalties of polarisation-dependent loss in dB.</summary>
    public PenaltySteps PdlPenalties { get; } = PenaltySteps.Read(sheet, "pdl-penalty@");

    /// <summary>Largest polarisation-dependent loss in dB.</summary>
    public Known<double>? PdlMax => Sheet.Real("pdl-max") ?? PdlPenalties.Last;

    /// <summary>Penalty of neighbours; null when not known.</summary>
    public Known<Decibels>? CrosstalkPenalty { get; } = sheet.Decibels("crosstalk-penalty");

    /// <summary>Penalties of multiplexers by the spacing in gigahertz that they are made for.</summary>
    public PenaltySteps FilterPenalties { get; } = PenaltySteps.Read(sheet, "filter-penalty@", isFloor: true);

    /// <summary>Penalty of mean polarisation-mode dispersion that is printed for the largest value alone: the most it may take.</summary>
    public Decibels PmdReserve { get; } = sheet.Decibels("pmd-reserve")?.Value ?? default;

    /// <summary>The same of polarisation-dependent loss.</summary>
    public Decibels PdlReserve { get; } = sheet.Decibels("pdl-reserve")?.Value ?? default;

    /// <summary>Lowest frequency it is tuned to.</summary>
    public Known<Frequency>? FrequencyMin { get; } = sheet.Real("frequency-min")?.As(Frequency.FromTerahertz);

    /// <summary>Highest frequency it is tuned to.</summary>
    public Known<Frequency>? FrequencyMax { get; } = sheet.Real("frequency-max")?.As(Frequency.FromTerahertz);

    /// <summary>Smallest spacing it is made for.</summary>
    public Known<Frequency>? SpacingMin { get; } = sheet.Real("spacing-min")?.As(Frequency.FromGigahertz);

    /// <summary>Smallest spacing that its definition plans channels at, with what filters so far apart do to it.</summary>
    public Known<Frequency>? SpacingPlanned => SpacingMin ?? Sheet.Real("spacing-planned")?.As(Frequency.FromGigahertz);

    /// <summary>What its spectrum takes of the band, wherever its laser may be; null when symbol rate or roll-off is not known.</summary>
    public Known<Frequency>? Occupied => Baud is { } baud && RollOff is { } roll
        ? roll.As(r => Frequency.FromGigahertz((baud.Value.Gigabaud * (1 + r)) + (2 * (LaserError?.Value.Gigahertz ?? 0))))
        : null;

    /// <summary>How far apart channels of it have to be: as its definition plans them, otherwise the next width of a slot that holds its
    /// spectrum; null when that is not known.</summary>
    /// <param name="grid">Where widths of slots are counted.</param>
    public Frequency? SlotOn(FrequencyGrid grid) => SpacingPlanned is { } planned ? planned.Value
        : Occupied is { } width ? grid.SlotWidth((int)Math.Ceiling((width.Value.Hertz / grid.SlotStep.Value.Hertz) - 1e-9))
        : null;

    /// <summary>How far the laser may be off its channel.</summary>
    public Known<Frequency>? LaserError { get; } = sheet.Real("laser-error")?.As(Frequency.FromGigahertz);

    /// <summary>Roll-off of the spectrum: how much wider than the symbol rate it is, as a share.</summary>
    public Known<double>? RollOff { get; } = sheet.Real("roll-off");

    /// <summary>Who defines it.</summary>
    public Citation Definition => Sheet.SourceOf("rate");
}
