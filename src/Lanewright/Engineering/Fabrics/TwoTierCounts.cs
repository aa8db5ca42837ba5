namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts of a fabric of two tiers whose uplinks spread equally.</summary>
/// <param name="Leaves">Leaves.</param>
/// <param name="Spines">Spines.</param>
/// <param name="Down">Ports for hosts of each leaf.</param>
/// <param name="Up">Uplinks of each leaf.</param>
/// <param name="Parallel">Links of each leaf to each spine.</param>
public sealed record TwoTierCounts(int Leaves, int Spines, int Down, int Up, int Parallel)
{
    /// <summary>Host ports.</summary>
    public long Hosts => (long)Leaves * Down;

    /// <summary>Links between leaves and spines.</summary>
    public long FabricLinks => (long)Leaves * Up;
}
