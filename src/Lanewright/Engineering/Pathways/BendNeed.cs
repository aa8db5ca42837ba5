using Lanewright.Engineering.Cabling;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Pathways;

/// <summary>The cable of a pathway that wants the widest bends.</summary>
/// <param name="Pathway">The pathway.</param>
/// <param name="Cable">The cable.</param>
/// <param name="Radius">The smallest radius it may have: lying in a tray, or while it is pulled through a duct.</param>
public sealed record BendNeed(Pathway Pathway, CableItem Cable, Known<Length> Radius)
{
    /// <summary>The needs of all pathways that state a radius, in their order.</summary>
    public static IEnumerable<BendNeed> Of(PathwayBook book, StandardsLibrary standards)
    {
        var most = new Dictionary<Pathway, BendNeed>();
        foreach (var (pathway, cable) in book.CablesByPathway())
        {
            if (pathway.BendRadius is null || cable.Diameter.Metres <= 0) continue;
            var radius = pathway.IsDuct ? BendSpace.PullingRadiusOf(standards, cable) : BendSpace.RadiusOf(standards, cable);
            if (!most.TryGetValue(pathway, out var known) || radius.Value > known.Radius.Value)
                most[pathway] = new BendNeed(pathway, cable, radius);
        }
        return book.Fills.Select(f => f.Pathway).Distinct().Where(most.ContainsKey).Select(p => most[p]);
    }
}
