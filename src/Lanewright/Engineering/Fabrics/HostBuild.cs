using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Space;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>A kind of host with a model, its cards and the cages its links leave from.</summary>
/// <param name="Demand">What is wanted.</param>
/// <param name="Model">What each is.</param>
/// <param name="Cards">The cards in each.</param>
/// <param name="Port">The kind of cage, unsplit.</param>
/// <param name="Cages">Number of the cage of each port, from 1.</param>
internal sealed record HostBuild(
    HostDemand Demand, DeviceModel Model, ImmutableArray<CardModel> Cards, PortUse Port, ImmutableArray<int> Cages)
{
    /// <summary>A hair that the product of growth may be above a whole number.</summary>
    private const double Rounding = 1e-9;

    /// <summary>What one puts on its rack, modules aside.</summary>
    public RackLoad Load { get; } = RackLoad.Of(Model, Cards);

    /// <summary>The host for a demand, or null with what is in the way.</summary>
    public static HostBuild? Of(HostDemand demand, FinderContext context, int rackUnits, out string fault)
    {
        fault = "";
        var mode = new PortMode(1, demand.Rate);
        var cards = demand.Cards.IsEmpty && (demand.Model is null || !Ports(demand.Model, [], mode, demand.Ports).Any())
            ? CheapestCards(context, mode, demand.Ports)
            : demand.Cards;
        if (cards.IsDefault)
        {
            fault = $"no card of the catalogue has a port of {demand.Rate}";
            return null;
        }
        var model = demand.Model ?? SmallestHost(context.Catalogue, cards.Length, rackUnits / Math.Max(1, demand.PerRack));
        if (model is null)
        {
            fault = $"no host of the catalogue takes {cards.Length} cards and stands {demand.PerRack} to a rack";
            return null;
        }
        if (demand.PerRack * model.Units > rackUnits)
        {
            fault = $"{demand.PerRack} x {model.Name} take {demand.PerRack * model.Units} units and a rack has {rackUnits}";
            return null;
        }
        if (Ports(model, cards, mode, demand.Ports).FirstOrDefault() is { } found)
            return new HostBuild(demand, model, cards, new PortUse(found.Cage, mode), [.. found.Numbers.Take(demand.Ports)]);
        fault = $"{model.Name} has no {demand.Ports} ports of {demand.Rate}";
        return null;
    }

    /// <summary>Hosts of a kind at the beginning of a year, rounded up.</summary>
    public static int CountIn(HostDemand demand, int year, Share growth)
    {
        var factor = 1.0;
        for (var i = 0; i < year; i++) factor *= 1 + growth.Value;
        return checked((int)Math.Ceiling((demand.Count * factor) - Rounding));
    }

    /// <summary>Kinds of cage with enough ports, in port order.</summary>
    private static IEnumerable<(CageModel Cage, List<int> Numbers)> Ports(
        DeviceModel model, ImmutableArray<CardModel> cards, PortMode mode, int ports)
    {
        var slots = CageLayout.Of(model, cards).Slots;
        return Enumerable.Range(0, slots.Length)
            .Where(i => slots[i].Cage.Modes.Contains(mode))
            .GroupBy(i => slots[i].Cage, ReferenceEqualityComparer.Instance)
            .Select(g => (Cage: slots[g.First()].Cage, Numbers: g.Select(i => i + 1).ToList()))
            .Where(g => g.Numbers.Count >= ports);
    }

    private static ImmutableArray<CardModel> CheapestCards(FinderContext context, PortMode mode, int ports)
    {
        var most = context.Standards.Practice("card", "line-cages").Value;
        var best = context.Catalogue.Cards
            .Where(c => c.Banks.Sum(b => b.Count) < most)
            .Select(c => (Card: c, Ports: c.Banks.Where(b => b.Cage.Modes.Contains(mode)).Select(b => b.Count).DefaultIfEmpty(0).Max()))
            .Where(c => c.Ports > 0)
            .Select(c => (c.Card, Count: (ports + c.Ports - 1) / c.Ports))
            .OrderBy(c => c.Card.Price * c.Count)
            .ThenBy(c => c.Card.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return best.Card is null ? default : [.. Enumerable.Repeat(best.Card, best.Count)];
    }

    private static DeviceModel? SmallestHost(Catalogue catalogue, int cards, int mostUnits) => catalogue.Devices
        .Where(d => d.Kind == DeviceKind.Host && d.Slots >= cards && d.Units <= mostUnits)
        .OrderBy(d => d.Units)
        .ThenBy(d => d.Price)
        .ThenBy(d => d.Name, StringComparer.Ordinal)
        .FirstOrDefault();
}
