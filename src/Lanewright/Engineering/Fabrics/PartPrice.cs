namespace Lanewright.Engineering.Fabrics;

/// <summary>What the leaves of a kind of host take where they stand, with their links to hosts and upward.</summary>
/// <param name="Cost">Hundredths over the years; infinite when they do not fit there.</param>
/// <param name="Watts">Most watts of the leaves and of all modules.</param>
internal readonly record struct PartPrice(double Cost, double Watts)
{
    /// <summary>Of what does not fit.</summary>
    public static PartPrice None { get; } = new(double.PositiveInfinity, double.PositiveInfinity);
}
