using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Plant;

/// <summary>Trunks alike between two panels.</summary>
public sealed record TrunkGroup
{
    /// <summary>Its number in the plan.</summary>
    public required int Index { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>The panel its near ends are in.</summary>
    public required int From { get; init; }

    /// <summary>The panel its far ends are in.</summary>
    public required int To { get; init; }

    /// <summary>How many trunks lie side by side.</summary>
    public required int Count { get; init; }

    /// <summary>The cable of each.</summary>
    public required CordModel Cable { get; init; }

    /// <summary>Positions of its arrays.</summary>
    public required int Positions { get; init; }

    /// <summary>The cassette; null where arrays are open at both panels.</summary>
    public SundryModel? Cassette { get; init; }

    /// <summary>Which ends have it.</summary>
    public CassetteEnds CassetteEnds { get; init; }

    /// <summary>The polarity method it is built by, or the type of its array cable where an end is open.</summary>
    public required string Method { get; init; }

    /// <summary>What light passes from the front of the near panel to that of the far one: adapters, cable and transitions.</summary>
    public required ImmutableArray<ArrayPart> Parts { get; init; }

    /// <summary>Stated length of each; null for the way along the pathways.</summary>
    public Length? Length { get; init; }

    /// <summary>Splices in each fibre.</summary>
    public int Splices { get; init; }

    /// <summary>Measured loss of the permanent link, both its end connections included; null when it is to be computed.</summary>
    public Decibels? MeasuredLoss { get; init; }

    /// <summary>Part of what is in use today that is laid beyond it; null for what is usual.</summary>
    public Share? Growth { get; init; }

    /// <summary>Whether it lies there already and is not bought.</summary>
    public bool IsExisting { get; init; }

    /// <summary>The side of pathways it lies in: as stated, else that of the sets led through it; empty for any.</summary>
    public string Side { get; init; } = "";

    /// <summary>Where the plan says so.</summary>
    public SourceSpan Span { get; init; }

    /// <summary>Fibres of each.</summary>
    public int Fibres => Cable.Fibres ?? Positions;

    /// <summary>Whether both ends show duplex ports.</summary>
    public bool IsDuplex => CassetteEnds == CassetteEnds.Both;

    /// <summary>Cassettes at the two ends of one of them.</summary>
    public int CassettesEach => CassettesAt(CassetteEnds);

    /// <summary>Ports that cables can be patched to in one of them: pairs of fibres between cassettes, or the array itself.</summary>
    public int PortsEach => IsDuplex ? Fibres / 2 : 1;

    /// <summary>Ports of all together.</summary>
    public int Ports => PortsEach * Count;

    /// <summary>Mated pairs in each fibre between those at its two ends.</summary>
    public int PairsBetween { get; init; }

    /// <summary>Mated pairs from cord to cord: the two at the panels' front, behind each cassette an array, and those between.</summary>
    public int Connections => PairsAtEnds(CassettesEach) + PairsBetween;

    /// <summary>Mated pairs at the two ends of a trunk with so many cassettes.</summary>
    public static int PairsAtEnds(int cassettes) => 2 + cassettes;

    /// <summary>How many cassettes a trunk has that has them at these ends.</summary>
    public static int CassettesAt(CassetteEnds ends) => ends switch { CassetteEnds.None => 0, CassetteEnds.Both => 2, _ => 1 };

    /// <summary>Whether it is known which duplex port is on which fibres, and not only what pairs with what.</summary>
    public bool IsOrderKnown => Parts.All(p => p.IsOrderKnown);

    /// <summary>Whether the arrays are angled.</summary>
    public bool IsAngled => Cable.PolishNear == "APC";

    /// <summary>What it is built by, as documents say it.</summary>
    public string MethodName => (IsDuplex ? "" : "type ") + Method;

    /// <summary>The cassette at an end; null where the array is open there.</summary>
    /// <param name="isFar">Whether the far end is meant.</param>
    public SundryModel? CassetteAt(bool isFar) =>
        CassetteEnds == CassetteEnds.Both || CassetteEnds == (isFar ? CassetteEnds.To : CassetteEnds.From) ? Cassette : null;

    /// <summary>Connector at the front of an end.</summary>
    public string ConnectorAt(bool isFar) => CassetteAt(isFar)?.Cassette?.Connector ?? (isFar ? Cable.Far : Cable.Near);

    /// <summary>Polish at the front of an end.</summary>
    public string PolishAt(bool isFar) =>
        CassetteAt(isFar)?.Cassette is { } cassette ? cassette.Polish : isFar ? Cable.PolishFar : Cable.PolishNear;

    /// <summary>Alignment pins of an open array; empty behind a cassette and where nothing is said.</summary>
    public string PinsAt(bool isFar) => CassetteAt(isFar) is null ? isFar ? Cable.PinsFar : Cable.PinsNear : "";

    /// <summary>What one of its trunks is called in documents and on its label.</summary>
    /// <param name="number">Which of them, from 1.</param>
    public string NameOf(int number) => $"{Name}-{Numerals.Whole(number)}";
}
