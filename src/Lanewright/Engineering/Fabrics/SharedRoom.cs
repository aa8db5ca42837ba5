namespace Lanewright.Engineering.Fabrics;

/// <summary>What switches take of what all of a fabric share: the rack units wished, and the heat that the hall carries away.</summary>
/// <param name="Units">Rack units.</param>
/// <param name="Watts">Most watts, as far as they are known.</param>
internal readonly record struct SharedRoom(long Units, double Watts)
{
    /// <summary>So many switches alike, modules aside.</summary>
    public static SharedRoom Of(SwitchBuild build, long count) => new(count * build.Units, count * build.Maximum);

    /// <summary>Both together.</summary>
    public static SharedRoom operator +(SharedRoom one, SharedRoom other) => new(one.Units + other.Units, one.Watts + other.Watts);
}
