using Lanewright.Model;

namespace Lanewright.Engineering.Load;

/// <summary>How the cages of all devices are used, as columns: a plan may have a million links.</summary>
internal sealed class CagesInUse
{
    private readonly int[] first;
    private readonly byte[] lanes;
    private readonly byte[] ways;

    /// <summary>No cage is in use.</summary>
    public CagesInUse(Plan plan)
    {
        first = new int[plan.Devices.Count + 1];
        for (var device = 0; device < plan.Devices.Count; device++)
            first[device + 1] = first[device] + plan.Devices.Group(device).Layout.Slots.Length;
        lanes = new byte[first[^1]];
        ways = new byte[first[^1]];
    }

    /// <summary>Lanes in use in a cage; 0 where it is not used or not known how its links are made.</summary>
    public int Lanes(int device, int cage) => lanes[first[device] + cage];

    /// <summary>Ports a cage is split into; 0 where it is not used.</summary>
    public int Ways(int device, int cage) => ways[first[device] + cage];

    /// <summary>Puts a cage to use.</summary>
    public void Note(int device, int cage, int lanesInUse, int ports)
    {
        lanes[first[device] + cage] = (byte)lanesInUse;
        ways[first[device] + cage] = (byte)ports;
    }
}
