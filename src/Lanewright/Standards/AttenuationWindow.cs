using Lanewright.Quantities;

namespace Lanewright.Standards;

/// <summary>Largest attenuation of a fibre over a window of wavelengths.</summary>
/// <param name="Window">The wavelengths it holds for.</param>
/// <param name="Limit">The attenuation with its source.</param>
public sealed record AttenuationWindow(WavelengthRange Window, Known<Attenuation> Limit);
