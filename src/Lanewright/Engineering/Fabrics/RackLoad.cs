namespace Lanewright.Engineering.Fabrics;

/// <summary>What a device puts on its rack.</summary>
/// <param name="Watts">The most it draws.</param>
/// <param name="Kilograms">What it weighs.</param>
internal readonly record struct RackLoad(double Watts, double Kilograms);
