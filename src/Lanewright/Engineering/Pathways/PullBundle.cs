using System.Collections.Immutable;
using Lanewright.Engineering.Space;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Pathways;

/// <summary>Cables alike that are pulled together from rack to rack.</summary>
/// <param name="Order">When it is pulled, from 1.</param>
/// <param name="Group">Number of its route, from 1: bundles of one route lie in the same stretches.</param>
/// <param name="From">Index of the rack it begins at.</param>
/// <param name="To">Index of the rack it ends at.</param>
/// <param name="Item">The cable.</param>
/// <param name="Cables">The cables, in the order of the plan.</param>
/// <param name="Way">The stretches they lie in; null where no pathway leads them.</param>
/// <param name="Distance">How far they go, without what goes up and down at the racks; null where nobody can tell.</param>
/// <param name="Pathways">Pathways from its first rack to the other, each once in a row.</param>
/// <param name="Length">The longest of its cables as ordered.</param>
/// <param name="Diameter">Outside diameter of the bundle.</param>
/// <param name="Kilograms">What it weighs; nothing where nobody can weigh its cables.</param>
/// <param name="WeightMark">How well the weight is known.</param>
/// <param name="Fibres">Fibres in it; nothing for copper.</param>
/// <param name="SpareFibres">Fibres of them that carry no light.</param>
/// <param name="Reason">Why it is pulled when it is.</param>
public sealed record PullBundle(
    int Order, int Group, int From, int To, CableItem Item, ImmutableArray<CableKey> Cables, CableWay? Way,
    Length? Distance, ImmutableArray<string> Pathways, Length Length,
    Length Diameter, double Kilograms, Mark WeightMark, int Fibres, int SpareFibres, PullReason Reason)
{
    /// <summary>Persons needed to lift it: one up to what one may lift in the best of postures; null where nobody can weigh it.</summary>
    public int? Persons(StandardsLibrary standards) => Kilograms <= 0 ? null
        : (int)Math.Max(1, Math.Ceiling(LiftingIndex.Of(Mass.FromKilograms(Kilograms), standards).Value));

    /// <summary>Its name.</summary>
    public string Name => "B" + Numerals.Padded(Order, 4);
}
