using System.Collections.Immutable;
using Lanewright.Model.Places;

namespace Lanewright.Model.Devices;

/// <summary>All devices, as columns: a plan may have hundreds of thousands.</summary>
public sealed class DeviceTable
{
    private readonly int[] groupOf;
    private readonly int[] rackOf;
    private readonly short[] unitOf;
    private readonly int[] numberInRack;
    private readonly ImmutableArray<Rack> racks;

    /// <summary>Takes the columns, one entry a device.</summary>
    /// <param name="groups">The groups, in order.</param>
    /// <param name="racks">The racks.</param>
    /// <param name="groupOf">Group of each device.</param>
    /// <param name="rackOf">Rack of each device, or -1.</param>
    /// <param name="unitOf">Lowest rack unit of each device, or 0.</param>
    /// <param name="numberInRack">Its number among those of its group in its rack, from 1.</param>
    public DeviceTable(
        ImmutableArray<DeviceGroup> groups, ImmutableArray<Rack> racks, int[] groupOf, int[] rackOf, short[] unitOf, int[] numberInRack)
    {
        Groups = groups;
        this.racks = racks;
        this.groupOf = groupOf;
        this.rackOf = rackOf;
        this.unitOf = unitOf;
        this.numberInRack = numberInRack;
    }

    /// <summary>The groups in natural order of their names.</summary>
    public ImmutableArray<DeviceGroup> Groups { get; }

    /// <summary>How many devices there are.</summary>
    public int Count => groupOf.Length;

    /// <summary>The group of a device.</summary>
    public DeviceGroup Group(int device) => Groups[groupOf[device]];

    /// <summary>The rack of a device, or null.</summary>
    public Rack? Rack(int device) => rackOf[device] < 0 ? null : racks[rackOf[device]];

    /// <summary>Index of the rack of a device, or -1.</summary>
    public int RackIndex(int device) => rackOf[device];

    /// <summary>Lowest rack unit of a device; 0 when it has no place.</summary>
    public int Unit(int device) => unitOf[device];

    /// <summary>Its name.</summary>
    public string Name(int device)
    {
        var group = Group(device);
        var rack = Rack(device);
        var number = device - group.First + 1;
        return group.Pattern.Name(number, numberInRack[device], rack?.Hall.Name ?? "", rack?.Row ?? "", rack?.Number ?? 0);
    }
}
