using Lanewright.Quantities;

namespace Lanewright.Standards;

/// <summary>Grids of wavelengths: ITU-T G.694.1 for dense ones, G.694.2 for coarse ones, and the band they are used in.</summary>
public sealed class FrequencyGrid(FactTable table)
{
    /// <summary>The frequency that dense channels are counted from.</summary>
    public Known<Frequency> Anchor { get; } = Terahertz(table, "DWDM", "anchor");

    /// <summary>The finest step of fixed grids.</summary>
    public Known<Frequency> FinestStep { get; } = Gigahertz(table, "DWDM", "step-finest");

    /// <summary>The step of the flexible grid.</summary>
    public Known<Frequency> FlexibleStep { get; } = Gigahertz(table, "DWDM", "flexible-step");

    /// <summary>What widths of slots of the flexible grid are multiples of.</summary>
    public Known<Frequency> SlotStep { get; } = Gigahertz(table, "DWDM", "slot-step");

    /// <summary>The lowest frequency of the band.</summary>
    public Known<Frequency> BandLow { get; } = Terahertz(table, "C-band", "low");

    /// <summary>The highest frequency of a channel in the band.</summary>
    public Known<Frequency> BandHigh { get; } = Terahertz(table, "C-band", "high");

    /// <summary>The room that channels of the band share.</summary>
    public Known<Frequency> BandRoom { get; } = Gigahertz(table, "C-band", "room");

    /// <summary>The width that noise is told in.</summary>
    public Known<Frequency> ReferenceWidth { get; } = Gigahertz(table, "reference", "width");

    /// <summary>The spacing that is taken where nobody says and nothing needs more.</summary>
    public static Frequency UsualSpacing { get; } = Frequency.FromGigahertz(100);

    /// <summary>How many coarse channels there are.</summary>
    public int CoarseChannels { get; } = (int)Required(table, "CWDM", "channels").Value;

    private Known<Wavelength> CoarseFirst { get; } = Required(table, "CWDM", "first").As(Wavelength.FromNanometres);

    private Known<double> CoarseStep { get; } = Required(table, "CWDM", "step");

    /// <summary>A dense channel by its number in steps of a width, as fixed grids count.</summary>
    public Frequency Dense(int number, Frequency step) => Frequency.FromHertz(Anchor.Value.Hertz + (number * step.Hertz));

    /// <summary>The middle of a slot of the flexible grid.</summary>
    public Frequency Flexible(int number) => Dense(number, FlexibleStep.Value);

    /// <summary>The width of a slot of the flexible grid.</summary>
    public Frequency SlotWidth(int steps) => SlotStep.Value * steps;

    /// <summary>A coarse channel, counted from nothing.</summary>
    public Wavelength Coarse(int number) =>
        Wavelength.FromNanometres(CoarseFirst.Value.Nanometres + (number * CoarseStep.Value));

    /// <summary>The largest step of fixed grids that a spacing is a multiple of; the flexible step when none is.</summary>
    public Frequency StepOf(Frequency spacing)
    {
        for (var step = FinestStep.Value * 8; step >= FinestStep.Value; step *= 0.5)
            if (IsMultiple(spacing.Hertz, step.Hertz)) return step;
        return FlexibleStep.Value;
    }

    /// <summary>Whether a frequency is the middle of a slot of the flexible grid.</summary>
    public bool IsOnGrid(Frequency frequency) => IsMultiple(frequency.Hertz - Anchor.Value.Hertz, FlexibleStep.Value.Hertz);

    /// <summary>The number of a channel in steps of a width from the anchor.</summary>
    public int NumberOf(Frequency frequency, Frequency step) =>
        (int)Math.Round((frequency.Hertz - Anchor.Value.Hertz) / step.Hertz);

    private static bool IsMultiple(double value, double step)
    {
        const double hertz = 1e3;
        return Math.Abs(value - (Math.Round(value / step) * step)) < hertz;
    }

    private static Known<Frequency> Terahertz(FactTable table, string subject, string field) =>
        Required(table, subject, field).As(Frequency.FromTerahertz);

    private static Known<Frequency> Gigahertz(FactTable table, string subject, string field) =>
        Required(table, subject, field).As(Frequency.FromGigahertz);

    private static Known<double> Required(FactTable table, string subject, string field) =>
        table[subject]?.Real(field) ?? throw new InvalidOperationException($"no grid row {subject} {field}");
}
