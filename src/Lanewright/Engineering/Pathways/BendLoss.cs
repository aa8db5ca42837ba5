using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Pathways;

/// <summary>What the bends along the whole way of a single-mode link may lose: in its cable, or in all its cords and the trunks it is
/// patched through.</summary>
/// <param name="Link">The link.</param>
/// <param name="Quarters">Quarter turns in pathways that state a radius.</param>
/// <param name="Radius">The smallest radius stated on the way.</param>
/// <param name="Total">What they lose; null where no limit is known at that radius.</param>
public sealed record BendLoss(int Link, int Quarters, Length Radius, Known<Decibels>? Total)
{
    private const double QuarterTurn = 1.0 / 4;
    private const double LongestUnstated = 1310;

    /// <summary>All single-mode links that go through a pathway with a stated radius. Active cables are left out: nobody says what light
    /// they have to spare, and what holds for them is the radius.</summary>
    public static IEnumerable<BendLoss> Of(Plan plan, LinkDesign design, PathwayBook book)
    {
        if (book.Net is not { } net) yield break;
        for (var link = 0; link < plan.Links.Count; link++)
        {
            BendLoss? whole = null;
            foreach (var piece in book.PiecesOf(link))
            {
                if (book.Pieces[piece].Item is not CordModel cord || book.WayOf(piece) is not { } way) continue;
                if (plan.Standards.Fibre(cord.Fibre)?.Kind != FibreKind.SingleMode) continue;
                if (WayBends.Of(net, way) is not { Tightest: { } radius, Quarters: var quarters }) continue;
                var turn = Macrobend.OfTurn(plan.Standards, plan.Policy.BendCategory, radius, Longest(design, link));
                var own = new BendLoss(link, quarters, radius, turn?.As(t => Decibels.From(t.Value * quarters * QuarterTurn)));
                whole = whole is null ? own : whole.And(own);
            }
            if (whole is not null) yield return whole;
        }
    }

    private BendLoss And(BendLoss next) => new(Link, Quarters + next.Quarters, Length.Min(Radius, next.Radius),
        Total is { } one && next.Total is { } other ? one.As(d => d + other.Value) : null);

    /// <summary>Bends cost most at the longest wave.</summary>
    private static Wavelength Longest(LinkDesign design, int link)
    {
        var lanes = design.SolutionOf(link)?.FromApplication?.Optical?.Lanes ?? [];
        return Wavelength.FromNanometres(lanes.IsDefaultOrEmpty ? LongestUnstated : lanes.Max(l => l.Longest.Nanometres));
    }
}
