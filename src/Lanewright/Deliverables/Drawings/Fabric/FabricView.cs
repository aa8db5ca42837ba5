using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabric;

/// <summary>How a page shows a network: with things down, and with boxes and lines that lead somewhere.</summary>
/// <param name="Damage">The network with something down; null while all works.</param>
/// <param name="Map">The network.</param>
/// <param name="BoxAddress">Where a box leads; empty for nowhere.</param>
/// <param name="LineAddress">Where a line leads; empty for nowhere.</param>
internal sealed record FabricView(
    DamagedNetwork? Damage, FabricMap Map, Func<PictureNode, string> BoxAddress, Func<PictureEdge, string> LineAddress)
{
    /// <summary>A way that changes the drawing it stands on.</summary>
    public const string Stays = "way stay";

    /// <summary>Devices of a box that are down.</summary>
    public long DevicesDown(PictureNode box) => Damage is null ? 0 : box.Nodes.Sum(n => (long)Map.Devices(n).Length - Damage.Up(n));

    /// <summary>Physical links of a line that are down.</summary>
    public long LinksDown(PictureEdge line) =>
        Damage is null ? 0 : line.FabricLinks.Sum(l => (long)Map.Graph.Links[l].Count - Damage.Left(l));

    /// <summary>What a box is and what choosing it does, for those who do not see it.</summary>
    public string BoxWords(PictureNode box)
    {
        var down = DevicesDown(box);
        if (box.Count == 1) return down > 0 ? $"{box.Name}, down; bring it up again" : $"{box.Name}; take it down";
        return $"{box.Name}, {Numerals.Grouped(box.Count)} alike, {Numerals.Grouped(down)} down; take one down";
    }

    /// <summary>What a line is and what choosing it does, for those who do not see it.</summary>
    public string LineWords(PictureEdge line, FabricPicture picture) =>
        $"{picture.Nodes[line.Upper].Name} to {picture.Nodes[line.Lower].Name}, {Numerals.Grouped(line.Links)} "
        + $"{(line.Links == 1 ? "link" : "links")}, {Numerals.Grouped(LinksDown(line))} down, {LoadWords.Percent(line.Worst)} in use; "
        + "take one down";
}
