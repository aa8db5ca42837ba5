using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Joins the places of two plugs by fibres.</summary>
internal static class FibreStrands
{
    /// <summary>The fibres: each path of the first end to the same path of the far end its port leads to.</summary>
    /// <param name="near">Plug of the first end.</param>
    /// <param name="far">Plug of each far end.</param>
    /// <param name="ends">Far ends.</param>
    /// <param name="ports">Ports of the first end that have light.</param>
    /// <param name="type">What each of them runs.</param>
    public static ImmutableArray<Strand> Of(PlugLayout near, PlugLayout far, int ends, int ports, InterfaceType type)
    {
        var strands = ImmutableArray.CreateBuilder<Strand>();
        var perPort = near.Sends.Length / Math.Max(1, ports);
        for (var path = 0; path < near.Sends.Length; path++)
        {
            var end = ends == 1 ? 0 : path / Math.Max(1, perPort);
            var farPath = ends == 1 ? path : path % Math.Max(1, perPort);
            if (end >= ends || farPath >= far.Hears.Length) continue;
            var both = type.IsBidirectional;
            strands.Add(new Strand(near.Sends[path], end, far.Hears[farPath], both ? StrandWay.Both : StrandWay.Forth, StrandKind.Fibre,
                Fibre(near, near.Sends[path])));
            strands.Add(new Strand(near.Hears[path], end, far.Sends[farPath], both ? StrandWay.Both : StrandWay.Back, StrandKind.Fibre,
                Fibre(near, near.Hears[path])));
        }
        return strands.ToImmutable();
    }

    /// <summary>A numbered plug numbers its fibres, a duplex cord has two; of any other plug no fibre is known by number.</summary>
    private static int Fibre(PlugLayout near, int row)
    {
        if (Numerals.TryWhole(near.Rows[row].Place, out var place)) return (int)place;
        return near.IsPairs ? (row % 2) + 1 : 0;
    }
}
