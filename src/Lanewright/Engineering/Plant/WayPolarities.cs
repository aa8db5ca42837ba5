using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Plant;

/// <summary>Finds with which cords transmitters meet receivers on a way through trunks.</summary>
internal static class WayPolarities
{
    /// <summary>The types of duplex cords and of array cords in the order they are tried: the first is bought everywhere but where only
    /// the other works.</summary>
    private static readonly ImmutableArray<string> DuplexTypes = ["A-to-B", "A-to-A"];
    private static readonly ImmutableArray<string> ArrayTypes = ["B", "A"];

    /// <summary>The polarity of a link: all its cords are of the usual type but the last that has a choice, which is of the type that makes
    /// transmitters meet receivers.</summary>
    /// <param name="table">What is known of positions.</param>
    /// <param name="hops">The trunks it goes through.</param>
    /// <param name="insides">How those lead fibres.</param>
    /// <param name="cords">What its cords join.</param>
    public static WayPolarity Of(
        PolarityTable table, ImmutableArray<TrunkPatch> hops, ImmutableArray<TrunkInside> insides, WayCords cords)
    {
        var usual = cords.Kinds.Select(k => Choices(k)[0]).ToImmutableArray();
        if (Unknown(table, hops, insides, cords) is { Length: > 0 } reason)
        {
            // What is wrong for certain fails, however much else is not known.
            var wrong = Angled(hops).ToList();
            return new WayPolarity(
                wrong.Count > 0 ? Verdict.Fail : Verdict.Unproven, null, [], usual, [], [.. wrong, reason],
                SourceOf(table, hops, cords, usual))
            {
                IsMated = wrong.Count == 0,
            };
        }
        var last = cords.Kinds.Length - 1;
        while (last > 0 && Choices(cords.Kinds[last]).Length == 1) last--;
        var answers = Choices(cords.Kinds[last]).Select(t => Answer(table, hops, insides, cords, usual.SetItem(last, t))).ToList();
        return answers.FirstOrDefault(a => a.Verdict == Verdict.Pass) ?? answers.FirstOrDefault(a => a.IsCrossed == true) ?? answers[0];
    }

    private static ImmutableArray<string> Choices(PatchKind kind) => kind switch
    {
        PatchKind.Array => ArrayTypes,
        PatchKind.Duplex => DuplexTypes,
        _ => [FibreWalk.FanOut],
    };

    /// <summary>Why the way cannot be followed; empty where it can.</summary>
    private static string Unknown(
        PolarityTable table, ImmutableArray<TrunkPatch> hops, ImmutableArray<TrunkInside> insides, WayCords cords)
    {
        for (var i = 0; i < hops.Length; i++)
        {
            if (!insides[i].IsKnown) return PolarityWords.RowsUnknown(hops[i].Trunk.Positions);
            if (!hops[i].IsNearOpen && hops[i].FarPort == 0 && !hops[i].Trunk.IsOrderKnown) return PolarityWords.OrderUnknown;
        }
        return FibreWalk.LanesOn(table, cords) == 0 ? PolarityWords.LanesUnknown(cords.Positions.Max()) : "";
    }

    private static WayPolarity Answer(
        PolarityTable table, ImmutableArray<TrunkPatch> hops, ImmutableArray<TrunkInside> insides, WayCords cords,
        ImmutableArray<string> types)
    {
        var fibres = new FibreWalk(table, hops, insides, cords, types).All();
        var isCrossed = fibres.Length > 0 && fibres.All(f => f.IsCrossed);
        var isInOrder = fibres.All(f => f.Lane == f.EndLane);
        var reasons = ImmutableArray.CreateBuilder<string>();
        reasons.AddRange(Angled(hops));
        var isMated = reasons.Count == 0;
        if (!isCrossed) reasons.Add(fibres.Any(f => f.End == default) ? PolarityWords.Parted : PolarityWords.NotCrossed);
        else if (!isInOrder) reasons.Add(PolarityWords.OtherOrder);
        var verdict = reasons.Count == 0 ? Verdict.Pass : Verdict.Fail;
        if (hops.Any(h => h.Trunk.IsDuplex && h.NearPort != h.FarPort)) reasons.Add(PolarityWords.OtherPorts);
        ImmutableArray<int> order = cords.Positions[0] > 0 && cords.Positions[^1] > 0
            ? [.. fibres.Where(f => f.IsSent).Select(f => f.MeetsReceiver == true ? f.EndLane : 0)]
            : [];
        return new WayPolarity(
            verdict, isCrossed, order, types, fibres, reasons.ToImmutable(), SourceOf(table, hops, cords, types)) { IsMated = isMated };
    }

    private static IEnumerable<string> Angled(ImmutableArray<TrunkPatch> hops) =>
        hops.Where(h => h.Trunk.IsAngled)
            .Select(h => h.Trunk.Parts.FirstOrDefault(p => !p.TakesAngled))
            .OfType<ArrayPart>()
            .Select(PolarityWords.Angled)
            .Distinct();

    /// <summary>The weakest row of all parts on the way and of the order of lanes at its ends.</summary>
    private static Citation SourceOf(
        PolarityTable table, ImmutableArray<TrunkPatch> hops, WayCords cords, ImmutableArray<string> types)
    {
        var plugged = types.SelectMany(t => t == FibreWalk.FanOut
            ? new[] { table.Part(ArrayPartKind.Transition, "paired"), table.Part(ArrayPartKind.Cord, DuplexTypes[0]) }
            : [table.Part(ArrayPartKind.Cable, t) ?? table.Part(ArrayPartKind.Cord, t)]);
        var parts = hops.SelectMany(h => h.Trunk.Parts).Concat(plugged.OfType<ArrayPart>()).Select(p => p.Source);
        var lanes = cords.Positions.Where(p => p > 0).Select(p => table.LanesOf(p)?.Source).OfType<Citation>();
        return parts.Concat(lanes).MaxBy(s => s.Mark) ?? Citation.OfPlan;
    }
}
