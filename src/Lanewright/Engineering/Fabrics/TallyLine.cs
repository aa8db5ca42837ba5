using Lanewright.Engineering.Choice;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Links made alike.</summary>
/// <param name="Solution">The way.</param>
/// <param name="Links">How many.</param>
/// <param name="FromCages">Cages at the lower end: a split cage counts once.</param>
/// <param name="ToCages">Cages at the upper end.</param>
internal sealed record TallyLine(Solution Solution, long Links, long FromCages, long ToCages)
{
    /// <summary>Cables: one for each split cage where it fans out, otherwise one a link.</summary>
    public long Cables => Solution.LinksPerCable == 1 ? Links : Math.Min(FromCages, ToCages);
}
