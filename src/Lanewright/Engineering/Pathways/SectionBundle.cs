using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Standards;

namespace Lanewright.Engineering.Pathways;

/// <summary>What lies in a section as circles: cables tied in bundles where bundles go in, and single ones where they do not.</summary>
/// <param name="Kind">Which of the kinds of cable, from 0.</param>
/// <param name="Cables">Cables tied together; 1 for a single one.</param>
/// <param name="Radius">Radius of the bundle in millimetres.</param>
public readonly record struct SectionBundle(int Kind, int Cables, double Radius)
{
    /// <summary>The circles of a stretch, kind by kind; cables of unknown diameter are left out.</summary>
    /// <param name="fill">The stretch.</param>
    /// <param name="contents">What lies in it.</param>
    /// <param name="standards">How cables are tied.</param>
    /// <param name="ring">Radius of the smallest ring around so many circles alike, by their number and radius.</param>
    public static ImmutableArray<SectionBundle> Of(
        SegmentFill fill, ImmutableArray<(CableItem Cable, int Count)> contents, StandardsLibrary standards, Func<int, double, double> ring)
    {
        var found = ImmutableArray.CreateBuilder<SectionBundle>();
        var packing = standards.Facility("bundle", "packing").Value;
        for (var kind = 0; kind < contents.Length; kind++)
        {
            var (cable, count) = contents[kind];
            if (cable.Diameter.Metres <= 0) continue;
            var size = Math.Min(count, (int)standards.Facility("bundle", "most-cables").Value);
            // Cables of a duct are pulled loose and lie as they fall; those of a tray are tied where the bundle goes in.
            if (fill.Pathway.IsDuct && count <= MostLoose) size = 1;
            while (size > 1 && 2 * Radius(size) > fill.Pathway.Width.Millimetres) size--;
            for (var left = count; left > 0; left -= size)
                found.Add(new SectionBundle(kind, Math.Min(left, size), Radius(Math.Min(left, size))));

            double Radius(int cables) => cables == 1 ? cable.Diameter.Millimetres / 2
                : Math.Max(BundleSize.Of(cable.Diameter, cables, packing).Millimetres / 2, ring(cables, cable.Diameter.Millimetres / 2));
        }
        return found.ToImmutable();
    }

    private const int MostLoose = 600;
}
