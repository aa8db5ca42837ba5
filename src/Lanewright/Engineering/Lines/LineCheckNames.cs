namespace Lanewright.Engineering.Lines;

/// <summary>The names of the comparisons a line goes through.</summary>
public static class LineCheckNames
{
    /// <summary>Pairs of fibres against channels that need one each.</summary>
    public const string Pairs = "fibre-pairs";

    /// <summary>Whether a type is known at all.</summary>
    public const string Type = "type";

    /// <summary>An amplifier that is not to be had.</summary>
    public const string Amplifier = "amplifier";

    /// <summary>A grey link over the fibre.</summary>
    public const string GreyLink = "grey-link";

    /// <summary>Signal over noise of the worst channel against what its receiver needs.</summary>
    public const string Osnr = "osnr";

    /// <summary>Signal over noise against the bound of Shannon.</summary>
    public const string Shannon = "shannon";

    /// <summary>Margin against the most that penalties may take which are known at one point only: less proves nothing.</summary>
    public const string Reserve = "reserve";

    /// <summary>Largest dispersion.</summary>
    public const string Dispersion = "dispersion";

    /// <summary>Mean polarisation-mode dispersion.</summary>
    public const string Pmd = "pmd";

    /// <summary>Differential group delay at any time.</summary>
    public const string Dgd = "dgd";

    /// <summary>Polarisation-dependent loss.</summary>
    public const string Pdl = "pdl";

    /// <summary>Lowest receive power.</summary>
    public const string ReceiveLow = "receive-power-low";

    /// <summary>Highest receive power.</summary>
    public const string ReceiveHigh = "receive-power-high";

    /// <summary>Loss of a line without amplifiers.</summary>
    public const string UnamplifiedLoss = "unamplified-loss";

    /// <summary>Lowest frequency against what the type is tuned to.</summary>
    public const string BandLow = "band-low";

    /// <summary>Highest frequency against what the type is tuned to.</summary>
    public const string BandHigh = "band-high";

    /// <summary>Spacing against what the type is made for.</summary>
    public const string Spacing = "spacing";

    /// <summary>Spectrum against the channels that multiplexers cut: what no table states of filters cannot be proved.</summary>
    public const string Filtering = "filtering";

    /// <summary>Spectrum against spacing; advice.</summary>
    public const string Clearance = "clearance";

    /// <summary>Gain of an amplifier.</summary>
    public const string Gain = "amplifier-gain";

    /// <summary>Tilt that an amplifier between spans levels.</summary>
    public const string Tilt = "amplifier-tilt";

    /// <summary>Signal over noise that a transmitter sends, where weak light needs it high.</summary>
    public const string TransmitterOsnr = "transmitter-osnr";

    /// <summary>Total output of an amplifier.</summary>
    public const string Output = "amplifier-output";

    /// <summary>Input of an amplifier against the lower end of its mask.</summary>
    public const string InputLow = "amplifier-input-low";

    /// <summary>Input of an amplifier against the upper end of its mask.</summary>
    public const string InputHigh = "amplifier-input-high";

    /// <summary>Loss of a span below which the closed forms lose accuracy; advice.</summary>
    public const string ShortSpan = "short-span";

    /// <summary>Dispersion below which the closed forms lose accuracy.</summary>
    public const string LowDispersion = "low-dispersion";

    /// <summary>Total power against the next hazard level; advice.</summary>
    public const string FibreLight = "fibre-light";
}
