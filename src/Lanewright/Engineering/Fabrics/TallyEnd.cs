using Lanewright.Engineering.Cabling;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>One side of a set of links, ready for counting: places and heights of its devices, and which of its cages have the raised
/// power limit.</summary>
internal sealed class TallyEnd
{
    public TallyEnd(PlacedFabric fabric, FabricEnd end, RackRoute route)
    {
        var count = end.Devices.Sum(r => r.Count);
        Racks = new Rack[count];
        Heights = new Length[count];
        var at = 0;
        foreach (var run in end.Devices)
        {
            var group = fabric.Layout.Groups[run.Group];
            for (var i = run.First; i < run.First + run.Count; i++, at++)
            {
                Racks[at] = group.Places[i].Rack;
                Heights[at] = route.Height(Racks[at].Type, group.Places[i].Unit, group.Model.Units);
            }
        }
        var cages = fabric.Cages[end.Devices[0].Group];
        Use = new PortUse(cages.Slots[end.Ports.Numbers[0] - 1].Cage, end.Mode);
        TypeOf = [.. Racks.Select(NumberOf)];
        IsRaised = [.. end.Ports.Numbers.Select(n => Use.Cage.IsRaised(cages.NumberInBank(n - 1)))];
    }

    /// <summary>How ports are opened.</summary>
    public PortUse Use { get; }

    /// <summary>Rack of each device.</summary>
    public Rack[] Racks { get; }

    /// <summary>Height of each device.</summary>
    public Length[] Heights { get; }

    /// <summary>For each cage in use, in order, whether it has the raised limit.</summary>
    public bool[] IsRaised { get; }

    /// <summary>The kinds of rack they stand in.</summary>
    public List<RackType> Types { get; } = [];

    /// <summary>Kind of rack of each device.</summary>
    public int[] TypeOf { get; }

    /// <summary>How many devices.</summary>
    public int Count => Racks.Length;

    private int NumberOf(Rack rack)
    {
        for (var i = 0; i < Types.Count; i++)
            if (ReferenceEquals(Types[i], rack.Type)) return i;
        Types.Add(rack.Type);
        return Types.Count - 1;
    }
}
