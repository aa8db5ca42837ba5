namespace Lanewright.Model.Demands;

/// <summary>What can fail as a whole.</summary>
public enum FailingPart
{
    /// <summary>One link, whatever of it fails.</summary>
    Link,

    /// <summary>A module, with all links of its cage.</summary>
    Module,

    /// <summary>A switch.</summary>
    Switch,

    /// <summary>A cable that carries several links.</summary>
    Cable,

    /// <summary>A rack with all that stands in it.</summary>
    Rack,

    /// <summary>A feed, with all devices that draw from no other.</summary>
    Feed,

    /// <summary>A tray or duct with all cables in it.</summary>
    Tray,

    /// <summary>A trunk, with all links patched through it.</summary>
    Trunk,

    /// <summary>A panel, with all links patched at it.</summary>
    Panel,

    /// <summary>A way between two halls, with all that goes from the one to the other.</summary>
    Route,

    /// <summary>A host, kept in reserve as a whole; what it does to a fabric is counted with its links.</summary>
    Host,

    /// <summary>A card of a host or chassis.</summary>
    Card,

    /// <summary>A cassette of a panel.</summary>
    Cassette,
}
