using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>What has to be laid for what is in use and its growth.</summary>
public static class TrunkNeed
{
    /// <summary>Ports with growth: a started one counts whole.</summary>
    /// <param name="used">Ports in use.</param>
    /// <param name="growth">Part of them that is laid beyond them.</param>
    public static int Ports(int used, Share growth) => (int)Math.Ceiling((used * (1 + growth.Value)) - Rounding);

    /// <summary>Trunks of so many ports each.</summary>
    public static int Trunks(int portsEach, int used, Share growth) => (Ports(used, growth) + portsEach - 1) / portsEach;

    /// <summary>Binary fractions may lie above a whole number by less than this.</summary>
    private const double Rounding = 1e-9;
}
