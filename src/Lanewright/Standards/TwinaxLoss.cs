namespace Lanewright.Standards;

/// <summary>Loss of a twinax pair per metre at a frequency.</summary>
/// <param name="Gauge">American wire gauge; a smaller number is a thicker wire.</param>
/// <param name="Gigahertz">The frequency.</param>
/// <param name="LossMax">Largest loss in dB per metre, with its source.</param>
public sealed record TwinaxLoss(int Gauge, double Gigahertz, Known<double> LossMax);
