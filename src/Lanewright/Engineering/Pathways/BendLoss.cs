using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Pathways;

/// <summary>What the bends along the way of a single-mode link may lose.</summary>
/// <param name="Link">The first link of its cable.</param>
/// <param name="Quarters">Quarter turns on the way.</param>
/// <param name="Radius">The smallest radius stated on the way.</param>
/// <param name="Total">What they lose; null where no limit is known at that radius.</param>
public sealed record BendLoss(int Link, int Quarters, Length Radius, Known<Decibels>? Total)
{
    private const double QuarterTurn = 1.0 / 4;
    private const double LongestUnstated = 1310;

    /// <summary>All single-mode cables that lie in a pathway with a stated radius.</summary>
    public static IEnumerable<BendLoss> Of(Plan plan, LinkDesign design, PathwayBook book)
    {
        for (var i = 0; i < book.Pieces.Length; i++)
        {
            var piece = book.Pieces[i];
            if (piece.Key.Kind != CableKind.Cable || piece.Item is not CordModel cord || book.WayOf(i) is not { } way) continue;
            if (!cord.Fibre.StartsWith("OS", StringComparison.Ordinal) || book.Net is not { } net) continue;
            var bends = WayBends.Of(net, way);
            if (bends.Tightest is not { } radius) continue;
            var turn = Macrobend.OfTurn(plan.Standards, plan.Policy.BendCategory, radius, Longest(design, piece.Key.Index));
            yield return new BendLoss(piece.Key.Index, bends.Quarters, radius,
                turn?.As(t => Decibels.From(t.Value * bends.Quarters * QuarterTurn)));
        }
    }

    /// <summary>Bends cost most at the longest wave.</summary>
    private static Wavelength Longest(LinkDesign design, int link)
    {
        var lanes = design.SolutionOf(link)?.FromApplication?.Optical?.Lanes ?? [];
        return Wavelength.FromNanometres(lanes.IsDefaultOrEmpty ? LongestUnstated : lanes.Max(l => l.Longest.Nanometres));
    }
}
