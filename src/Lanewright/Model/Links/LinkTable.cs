namespace Lanewright.Model.Links;

/// <summary>All links, as columns: a plan may have a million. The first end is the statement's from side.</summary>
public sealed class LinkTable
{
    private readonly int[] statementOf;
    private readonly int[] fromDevice;
    private readonly int[] toDevice;
    private readonly PortPlace[] fromPort;
    private readonly PortPlace[] toPort;

    /// <summary>Takes the columns, one entry a link.</summary>
    public LinkTable(int[] statementOf, int[] fromDevice, PortPlace[] fromPort, int[] toDevice, PortPlace[] toPort)
    {
        this.statementOf = statementOf;
        this.fromDevice = fromDevice;
        this.fromPort = fromPort;
        this.toDevice = toDevice;
        this.toPort = toPort;
    }

    /// <summary>How many links there are.</summary>
    public int Count => statementOf.Length;

    /// <summary>Index of the statement a link comes from.</summary>
    public int Statement(int link) => statementOf[link];

    /// <summary>The device of its first end.</summary>
    public int FromDevice(int link) => fromDevice[link];

    /// <summary>The port of its first end.</summary>
    public PortPlace FromPort(int link) => fromPort[link];

    /// <summary>The device of its second end.</summary>
    public int ToDevice(int link) => toDevice[link];

    /// <summary>The port of its second end.</summary>
    public PortPlace ToPort(int link) => toPort[link];

    /// <summary>Which port of a split cage a link is, from 1.</summary>
    public int LegOf(int link) => Math.Max((int)FromPort(link).Part, ToPort(link).Part) + 1;
}
