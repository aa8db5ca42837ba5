namespace Lanewright.Engineering.Fabrics;

/// <summary>A leaf for one kind of host under a given upper tier.</summary>
/// <param name="Config">The switch and its ports.</param>
/// <param name="UpperPorts">How the upper tier opens ports for it.</param>
/// <param name="HostsPerLeaf">Hosts of a full leaf.</param>
/// <param name="Parallel">Links to each upper switch.</param>
/// <param name="Blocks">Blocks after the last year.</param>
/// <param name="UpperLinks">Links that each upper switch of a plane takes from all leaves of the kind.</param>
/// <param name="Least">Hundredths it costs at least over the years, links to hosts and upward included.</param>
internal sealed record LeafRow(
    LeafConfig Config, PortUse UpperPorts, int HostsPerLeaf, int Parallel, int Blocks, int UpperLinks, double Least)
{
    /// <summary>Rack units of all leaves.</summary>
    public long Units { get; init; }

    /// <summary>Most watts of all leaves, with the modules of their links at the least.</summary>
    public double Watts { get; init; }

    /// <summary>Links of each leaf to all upper switches.</summary>
    public int Uplinks { get; init; }

    /// <summary>The leaf in a design.</summary>
    public LeafChoice Choice => new(Config.Build, Config.HostPorts, Config.UpPorts, HostsPerLeaf, Parallel) { IsApart = Config.IsApart };

    /// <summary>Cages of an upper switch that it takes.</summary>
    public int UpperCages => UpperPorts.CagesFor(UpperLinks);
}
