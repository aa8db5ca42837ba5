namespace Lanewright.Engineering.Fabrics;

/// <summary>A chassis as the folded Clos inside it, with as much to the fabric as to the front.</summary>
/// <param name="FrontPerLineChip">Ports at the front of each line chip.</param>
/// <param name="LineChips">Chips on the line cards.</param>
/// <param name="FabricChips">Chips on the fabric cards.</param>
/// <param name="MostFrontPorts">The most front ports such chips can have.</param>
public sealed record ChassisCounts(int FrontPerLineChip, int LineChips, int FabricChips, long MostFrontPorts)
{
    /// <summary>All chips.</summary>
    public int Chips => LineChips + FabricChips;
}
