namespace Lanewright.Model.Catalogues;

/// <summary>What a device is for.</summary>
public enum DeviceKind
{
    /// <summary>A switch of fixed form.</summary>
    Switch,

    /// <summary>A switch that takes cards.</summary>
    Chassis,

    /// <summary>A frame that trunks end in; nothing in it draws power.</summary>
    Panel,

    /// <summary>Anything at the edge: a server, a storage node, an instrument.</summary>
    Host,
}
