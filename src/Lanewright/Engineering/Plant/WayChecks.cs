using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Plant;
using Lanewright.Standards;

namespace Lanewright.Engineering.Plant;

/// <summary>Whether light finds its way through trunks, as comparisons of a link: what does not mate or leads transmitters to
/// transmitters is dark, whatever its loss.</summary>
internal static class WayChecks
{
    /// <summary>The comparisons of links that go one way.</summary>
    /// <param name="standards">What is known of connectors and positions.</param>
    /// <param name="way">The trunks.</param>
    /// <param name="cords">The cords; empty where one is missing, and there is nothing to follow.</param>
    /// <param name="fibres">Fibres of the module that has most.</param>
    /// <param name="linksPerCable">Ports of a split cage that one cable serves.</param>
    public static IEnumerable<Check> Of(
        StandardsLibrary standards, TrunkWay way, ImmutableArray<PatchCord> cords, int fibres, int linksPerCable)
    {
        foreach (var leg in way.Legs)
            if (leg.Trunk.Cassette is { } cassette) yield return Mating(standards, leg.Trunk, cassette);
        if (!cords.IsEmpty) yield return Polarity(standards, way, cords, fibres, linksPerCable);
    }

    private static Check Mating(StandardsLibrary standards, TrunkGroup trunk, SundryModel cassette)
    {
        var problem = CassetteFit.Dark(standards, trunk);
        return Check.Of(CheckNames.CassetteFit, problem.Length == 0, CatalogueFacts.SourceOf(cassette), problem);
    }

    /// <summary>The worst of the ports of a split cage.</summary>
    private static Check Polarity(
        StandardsLibrary standards, TrunkWay way, ImmutableArray<PatchCord> cords, int fibres, int linksPerCable)
    {
        var table = standards.Polarity;
        ImmutableArray<TrunkInside> insides = [.. way.Legs.Select(l => TrunkInside.Of(l.Trunk, table))];
        WayPolarity? worst = null;
        for (var part = 1; part <= Math.Max(1, linksPerCable); part++)
        {
            var walked = WayCords.Of(cords, fibres, part);
            ImmutableArray<TrunkPatch> hops = [.. way.Legs.Select((l, i) => TrunkPatch.Of(l, insides[i], 0, part, 1, 1))];
            var polarity = WayPolarities.Of(table, hops, insides, walked);
            if (worst is null || polarity.Verdict > worst.Verdict) worst = polarity;
            if (walked.Part == 0) break;
        }
        var reasons = string.Join("; ", worst?.Reasons ?? []);
        return worst?.Verdict switch
        {
            Verdict.Pass => Check.Of(CheckNames.Polarity, true, worst.Source),
            Verdict.Fail => Check.Of(CheckNames.Polarity, false, worst.Source, reasons),
            _ => Check.Unknown(CheckNames.Polarity, reasons, worst?.Source),
        };
    }
}
