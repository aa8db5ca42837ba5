using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Links;

/// <summary>The passive way between two modules, cords included.</summary>
public sealed record Channel
{
    /// <summary>Class of fibre.</summary>
    public required Fibre Fibre { get; init; }

    /// <summary>Length of the fibre.</summary>
    public required Length Length { get; init; }

    /// <summary>Mated pairs; the plugs in the modules do not count.</summary>
    public int Connections { get; init; }

    /// <summary>Loss of each mated pair.</summary>
    public required Known<Decibels> ConnectionLoss { get; init; }

    /// <summary>Splices.</summary>
    public int Splices { get; init; }

    /// <summary>Loss of each splice.</summary>
    public required Known<Decibels> SpliceLoss { get; init; }

    /// <summary>Reflectance of each mated pair; null when the polish decides.</summary>
    public Known<Decibels>? Reflectance { get; init; }

    /// <summary>Measured attenuation; null for the limit of the fibre class.</summary>
    public Known<Attenuation>? Attenuation { get; init; }

    /// <summary>Where <see cref="Attenuation"/> was measured; null when it holds at every wavelength of the link.</summary>
    public Wavelength? AttenuationAt { get; init; }

    /// <summary>Measured loss of the whole; null when it is to be computed.</summary>
    public Decibels? MeasuredLoss { get; init; }

    /// <summary>A part of it that was measured, where the rest is to be computed; null when none was.</summary>
    public MeasuredStretch? Stretch { get; init; }

    /// <summary>An attenuator put in on purpose.</summary>
    public Decibels Attenuator { get; init; }

    /// <summary>Loss kept back for ageing and repair.</summary>
    public Decibels AgeingMargin { get; init; }

    /// <summary>Loss that glass measured at another wavelength has more at those of the type.</summary>
    public Decibels OtherWavelengths { get; init; }
}
