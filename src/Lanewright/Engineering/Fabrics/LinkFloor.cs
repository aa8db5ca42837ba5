using Lanewright.Engineering.Choice;

namespace Lanewright.Engineering.Fabrics;

/// <summary>The least a way to make a link takes.</summary>
/// <param name="Solution">The way, at the shortest length asked about.</param>
/// <param name="Watts">What one link draws.</param>
internal sealed record LinkFloor(Solution Solution, double Watts)
{
    /// <summary>Hundredths one link costs at least, with what exists already at nothing.</summary>
    public long Price(FreeItems free) =>
        (long)Math.Floor(Solution.PriceWithout(p => !free.IsEmpty && free.CountOf(p.Item) > 0));
}
