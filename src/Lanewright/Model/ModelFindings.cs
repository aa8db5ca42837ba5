using Lanewright.Findings;

namespace Lanewright.Model;

/// <summary>What can be wrong between the things a plan names.</summary>
public static class ModelFindings
{
    /// <summary>A name that nothing in the plan or the catalogue has.</summary>
    public static FindingKind NameUnknown { get; } = new("LW1101", "NameUnknown", Severity.Error);

    /// <summary>The same name given to two things.</summary>
    public static FindingKind NameTaken { get; } = new("LW1102", "NameTaken", Severity.Error);

    /// <summary>A name that could mean several things.</summary>
    public static FindingKind NameAmbiguous { get; } = new("LW1103", "NameAmbiguous", Severity.Error);

    /// <summary>A file of another language version.</summary>
    public static FindingKind VersionUnknown { get; } = new("LW1104", "VersionUnknown", Severity.Error);

    /// <summary>More devices or links than any building holds.</summary>
    public static FindingKind PlanOutOfBounds { get; } = new("LW1105", "PlanOutOfBounds", Severity.Error);

    /// <summary>A currency that no price of the plan is in.</summary>
    public static FindingKind CurrencyUnpriced { get; } = new("LW1106", "CurrencyUnpriced", Severity.Error);

    /// <summary>A device where another one stands already.</summary>
    public static FindingKind RackUnitTaken { get; } = new("LW1201", "RackUnitTaken", Severity.Error);

    /// <summary>A device above or below its rack.</summary>
    public static FindingKind RackUnitOutside { get; } = new("LW1202", "RackUnitOutside", Severity.Error);

    /// <summary>More cards than slots.</summary>
    public static FindingKind SlotsExceeded { get; } = new("LW1203", "SlotsExceeded", Severity.Error);

    /// <summary>Racks and devices do not come out even.</summary>
    public static FindingKind PlacesDoNotFit { get; } = new("LW1204", "PlacesDoNotFit", Severity.Error);

    /// <summary>Groups that should be paired have different numbers.</summary>
    public static FindingKind CountsDiffer { get; } = new("LW1301", "CountsDiffer", Severity.Error);

    /// <summary>A device has no free port of the kind a link needs.</summary>
    public static FindingKind PortsExhausted { get; } = new("LW1302", "PortsExhausted", Severity.Error);

    /// <summary>Two links want the same port.</summary>
    public static FindingKind PortTaken { get; } = new("LW1303", "PortTaken", Severity.Error);

    /// <summary>A port number the device does not have.</summary>
    public static FindingKind PortUnknown { get; } = new("LW1304", "PortUnknown", Severity.Error);

    /// <summary>A pattern that joins nothing.</summary>
    public static FindingKind PatternEmpty { get; } = new("LW1305", "PatternEmpty", Severity.Error);

    /// <summary>A device linked to itself.</summary>
    public static FindingKind LinkToItself { get; } = new("LW1306", "LinkToItself", Severity.Error);

    /// <summary>A split whose ports have another rate than the links.</summary>
    public static FindingKind BreakoutContradicts { get; } = new("LW1310", "BreakoutContradicts", Severity.Error);

    /// <summary>A catalogue item that does not hang together.</summary>
    public static FindingKind CatalogueFault { get; } = new("LW1501", "CatalogueFault", Severity.Error);

    /// <summary>Trunks whose keys do not go together.</summary>
    public static FindingKind TrunkContradicts { get; } = new("LW1702", "TrunkContradicts", Severity.Error);

    /// <summary>A tray, riser or duct whose keys do not go together.</summary>
    public static FindingKind PathwayContradicts { get; } = new("LW1711", "PathwayContradicts", Severity.Error);

    /// <summary>A demand whose keys do not go together, or that no host can send.</summary>
    public static FindingKind DemandContradicts { get; } = new("LW1601", "DemandContradicts", Severity.Error);

    /// <summary>A span or a line whose keys do not go together.</summary>
    public static FindingKind LineContradicts { get; } = new("LW1701", "LineContradicts", Severity.Error);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        NameUnknown, NameTaken, NameAmbiguous, VersionUnknown, PlanOutOfBounds, CurrencyUnpriced,
        RackUnitTaken, RackUnitOutside, SlotsExceeded,
        PlacesDoNotFit, CountsDiffer, PortsExhausted, PortTaken, PortUnknown, PatternEmpty, LinkToItself, BreakoutContradicts,
        CatalogueFault, DemandContradicts, LineContradicts, TrunkContradicts, PathwayContradicts,
    ];
}
