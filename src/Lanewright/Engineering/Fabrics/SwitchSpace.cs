using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Every switch a catalogue offers: boxes, and chassis with each number of each card.</summary>
internal sealed class SwitchSpace
{
    private readonly Dictionary<(SwitchBuild Build, PortUse Use), int> most = [];
    private readonly Dictionary<SwitchBuild, ImmutableArray<PortUse>> uses = [];

    public SwitchSpace(FinderContext context)
    {
        var fewest = (int)context.Standards.Practice("card", "line-cages").Value;
        var devices = context.Catalogue.Devices;
        Boxes = [.. devices.Where(d => d.Kind == DeviceKind.Switch).Select(d => new SwitchBuild(d, []))];
        Chassis =
        [
            .. from device in devices
               where device.Kind == DeviceKind.Chassis
               from card in context.Catalogue.Cards
               where card.Banks.Sum(b => b.Count) >= fewest
               from count in Enumerable.Range(1, device.Slots)
               select new SwitchBuild(device, [.. Enumerable.Repeat(card, count)]),
        ];
    }

    /// <summary>Switches of fixed form, in natural order.</summary>
    public ImmutableArray<SwitchBuild> Boxes { get; }

    /// <summary>Chassis with cards alike.</summary>
    public ImmutableArray<SwitchBuild> Chassis { get; }

    /// <summary>Boxes and chassis.</summary>
    public IEnumerable<SwitchBuild> All => Boxes.Concat(Chassis);

    /// <summary>Ways to open ports of a rate that the wishes allow.</summary>
    public IEnumerable<PortUse> Uses(SwitchBuild build, BitRate rate, WantedFabric wanted)
    {
        foreach (var use in UsesOf(build))
            if (use.Mode.Rate == rate && IsAllowed(use, wanted)) yield return use;
    }

    /// <summary>Ways to open ports toward other switches that the wishes allow, at any rate.</summary>
    public IEnumerable<PortUse> FabricUses(SwitchBuild build, WantedFabric wanted)
    {
        foreach (var use in UsesOf(build))
            if (IsAllowed(use, wanted) && (wanted.UplinkRates.IsEmpty || wanted.UplinkRates.Contains(use.Mode.Rate))) yield return use;
    }

    private ImmutableArray<PortUse> UsesOf(SwitchBuild build)
    {
        if (uses.TryGetValue(build, out var found)) return found;
        return uses[build] = [.. build.Cages.SelectMany(c => c.Modes.Distinct().Select(m => new PortUse(c, m)))];
    }

    /// <summary>Bits each second of all ports toward other switches together at the most: each cage opened in the way that gives most, and
    /// nothing lost to neighbours or ceilings.</summary>
    public double MostBits(SwitchBuild build, WantedFabric wanted) => FabricUses(build, wanted)
        .GroupBy(u => u.Cage, ReferenceEqualityComparer.Instance)
        .Sum(g => g.Max(u => (double)u.Mode.Total.BitsPerSecond) * build.Layout.Slots.Count(s => ReferenceEquals(s.Cage, g.Key)));

    private static bool IsAllowed(PortUse use, WantedFabric wanted) =>
        wanted.FormFactors.IsEmpty || wanted.FormFactors.Contains(use.Cage.FormFactor.Name);

    /// <summary>Ports a switch has when all are opened in one way.</summary>
    public int Most(SwitchBuild build, PortUse use)
    {
        if (most.TryGetValue((build, use), out var found)) return found;
        return most[(build, use)] = PortTaking.Most(build.Layout, use);
    }
}
