using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Binding;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Fabrics.Support;

/// <summary>Catalogues of invented switches with ports of one kind, joined by one cable of one price at any length: what remains is
/// counting, which can be done all over by brute force.</summary>
internal static class SyntheticFabrics
{
    public static readonly BitRate Rate = BitRate.FromGigabits(100);

    private static readonly CageModel Cage =
        CatalogueBinder.Shipped.Find<DeviceModel>("fixed-32x100")!.Banks[0].Cage with { Modes = [new PortMode(1, Rate)] };

    /// <summary>A search through so many switches.</summary>
    public static Sizing Sizing(IEnumerable<SyntheticSwitch> switches, int linkPrice = 1) => new(new FinderContext(
        StandardsLibrary.Shipped, Catalogue(switches, linkPrice), PolicyBinder.Default(StandardsLibrary.Shipped)));

    /// <summary>The catalogue.</summary>
    public static Catalogue Catalogue(IEnumerable<SyntheticSwitch> switches, int linkPrice)
    {
        var server = CatalogueBinder.Shipped.Find<DeviceModel>("server-1u")! with { Slots = 8 };
        var card = CatalogueBinder.Shipped.Find<CardModel>("nic-2x100")! with { Banks = [new CageBank(2, Cage)] };
        var wire = CatalogueBinder.Shipped.Find<AssemblyModel>("aoc-100")! with
        {
            Name = "wire",
            Lengths = [Length.FromMetres(2000)],
            Price = Money.FromUnits(linkPrice),
            PricePerMetre = Money.Zero,
            NearPower = default,
            FarPower = default,
        };
        return new Catalogue([server, card, wire, .. switches.Select(Model)]);
    }

    /// <summary>Hosts of one kind that want ports.</summary>
    public static WantedFabric Wanted(int hosts, Ratio ratio, int ports = 1, int survive = 0, params FabricShape[] shapes) => new()
    {
        Hosts = [Hosts("host", hosts, ports)],
        Oversubscription = [ratio],
        Survive = survive,
        Shapes = [.. shapes],
    };

    /// <summary>A kind of host.</summary>
    public static HostDemand Hosts(string name, int count, int ports = 1) =>
        new() { Name = name, Count = count, Ports = ports, Rate = Rate, PerRack = 8 };

    private static DeviceModel Model(SyntheticSwitch s) => new()
    {
        Name = s.Name,
        Title = s.Name,
        Kind = DeviceKind.Switch,
        Banks = [new CageBank(s.Radix, Cage)],
        Units = 1,
        Typical = Watts.From(s.Power),
        Maximum = Watts.From(s.Power),
        Price = Money.FromUnits(s.Price),
    };
}
