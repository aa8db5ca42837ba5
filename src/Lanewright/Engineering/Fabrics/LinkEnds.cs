using Lanewright.Engineering.Choice;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The kinds of port at both ends of a set of links.</summary>
/// <param name="From">The lower end.</param>
/// <param name="To">The upper end.</param>
internal readonly record struct LinkEnds(PortUse From, PortUse To)
{
    /// <summary>How the cages are split. Both at once is not planned: its fan-outs would have to meet in couplers.</summary>
    public FanShape Shape => From.Mode.Ways > 1 ? FanShape.FromEnd : To.Mode.Ways > 1 ? FanShape.ToEnd : FanShape.Single;

    /// <summary>Whether a set of links between them is part of the searched space.</summary>
    public bool IsPlanned => From.Mode.Rate == To.Mode.Rate && (From.Mode.Ways == 1 || To.Mode.Ways == 1);
}
