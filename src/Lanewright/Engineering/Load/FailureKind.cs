namespace Lanewright.Engineering.Load;

/// <summary>What fails together.</summary>
public enum FailureKind
{
    /// <summary>One physical link.</summary>
    Link,

    /// <summary>A module with all links of its cage.</summary>
    Module,

    /// <summary>A switch.</summary>
    Switch,

    /// <summary>A cable with all its legs.</summary>
    Cable,

    /// <summary>A rack with all that stands in it.</summary>
    Rack,

    /// <summary>A power feed with all that draws from it alone.</summary>
    Feed,

    /// <summary>A tray with all cables in it.</summary>
    Tray,

    /// <summary>A trunk with all links patched through it.</summary>
    Trunk,

    /// <summary>A panel with all links patched at it.</summary>
    Panel,

    /// <summary>A way between two halls with all that goes from the one to the other.</summary>
    Route,

    /// <summary>A span of fibre between sites with all routes over it.</summary>
    Span,

    /// <summary>A duct between sites with all spans in it.</summary>
    Duct,
}
