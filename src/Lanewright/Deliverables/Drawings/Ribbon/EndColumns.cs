namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Where the parts of an end stand across the sheet, measured from its own edge; the second end is the mirror of the
/// first.</summary>
/// <param name="BodyRight">Inner edge of what sits in the cage.</param>
/// <param name="Plug">Where the cable begins.</param>
/// <param name="Block">Middle of the block.</param>
/// <param name="Media">Where light or current begins.</param>
internal sealed record EndColumns(double BodyRight, double Plug, double Block, double Media)
{
    /// <summary>Outer edge of the port.</summary>
    public const double PortLeft = Sheet.Margin;

    /// <summary>Inner edge of the port.</summary>
    public const double PortRight = 124;

    /// <summary>Outer edge of what sits in the cage.</summary>
    public const double BodyLeft = 196;

    /// <summary>Half the width of a block.</summary>
    public const double BlockHalf = 33;

    /// <summary>Where lasers and photodiodes stand in a module.</summary>
    public const double Diode = 318;

    /// <summary>Where wavelengths are written.</summary>
    public const double Label = 326;

    /// <summary>Where wavelengths are joined, on the side of the lanes.</summary>
    public const double MuxLeft = 414;

    /// <summary>The same on the side of the fibre.</summary>
    public const double MuxRight = 430;

    /// <summary>Middle of a port.</summary>
    public const double PortMiddle = (PortLeft + PortRight) / 2;

    private const double BlockMiddle = BodyLeft + 45;

    /// <summary>The columns of an end.</summary>
    public static EndColumns Of(EndBody body) => body switch
    {
        EndBody.Module => new EndColumns(440, 498, BlockMiddle, Diode),
        EndBody.PairModule => new EndColumns(310, 310, BlockMiddle, 310),
        EndBody.PassiveEnd => new EndColumns(272, 272, 234, 234),
        EndBody.ActiveCopperEnd => new EndColumns(330, 330, BlockMiddle, BlockMiddle),
        EndBody.ActiveOpticalEnd => new EndColumns(300, 300, 250, 250),
        _ => new EndColumns(PortRight, PortRight, PortMiddle, PortMiddle),
    };
}
