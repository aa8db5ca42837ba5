using CsCheck;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;
using Check = Lanewright.Engineering.Links.Check;

namespace Lanewright.Tests.Properties;

/// <summary>What must hold of any channel between any two types that understand each other.</summary>
public sealed class ChannelProperties
{
    private static readonly StandardsLibrary Limits = StandardsLibrary.Shipped;

    private static readonly (InterfaceType From, InterfaceType To)[] Pairs =
    [
        .. from a in Limits.InterfaceTypes
           from b in Limits.InterfaceTypes
           where a.FibreKind == b.FibreKind && !a.Lanes.IsEmpty && Checks.Verdict(MediaMatch.Of(a, b)) == Verdict.Pass
           select (a, b),
    ];

    private static readonly Gen<Drawn> Links = Gen.Select(
        Gen.Int[0, Pairs.Length - 1], Gen.Double[0.5, 45_000], Gen.Int[0, 12], Gen.Double[0, 0.9], Gen.Int[0, 6], Gen.Double[-65, -18],
        (pair, metres, connections, loss, splices, reflectance) => new Drawn(pair, metres, connections, loss, splices, reflectance));

    [Fact]
    public void Pairs_AreMany() => Assert.True(Pairs.Length > 80, $"{Pairs.Length}");

    [Fact]
    public void MoreLoss_NeverRaisesALossMargin() => Links.Sample(drawn =>
    {
        var channel = drawn.Channel;
        Channel[] worse =
        [
            channel with { Connections = channel.Connections + 1 },
            channel with { Splices = channel.Splices + 1 },
            channel with { Attenuator = Decibels.From(1) },
            channel with { AgeingMargin = Decibels.From(0.5) },
            channel with { Length = channel.Length * 1.1 },
        ];
        var before = Judge(drawn, channel);
        foreach (var after in worse.Select(c => Judge(drawn, c)))
        {
            foreach (var name in new[] { CheckNames.PowerBudget, CheckNames.Reach, CheckNames.Reflectance, CheckNames.ReturnLoss })
                if (before.GetValueOrDefault(name)?.Margin is { } m
                    && after.GetValueOrDefault(name)?.Margin is { } n
                    && SameLimit(before[name], after[name]))
                    Assert.True(n <= m + 1e-9, $"{name}: {m} became {n}");
            // Past its plain reach a type has another, larger loss limit: only margins under one limit compare.
            var (was, now) = (before[CheckNames.ChannelLoss], after[CheckNames.ChannelLoss]);
            if (was.Margin is not null && SameLimit(was, now)) Assert.True(now.Margin <= was.Margin + 1e-9);
        }
    });

    [Fact]
    public void SwappedEnds_SwapDirectionsAndNothingElse() => Links.Sample(drawn =>
    {
        var forth = FibreLinkChecks.Of(Limits, drawn.Channel, drawn.From, drawn.To);
        var back = FibreLinkChecks.Of(Limits, drawn.Channel, drawn.To, drawn.From);
        Assert.Equal(forth.Select(c => (c.Name, c.Verdict)), back.Select(c => (c.Name, c.Verdict)));
        foreach (var (one, other) in forth.Zip(back).Where(p => !p.First.IsAdvice && p.First.Margin is not null))
            Assert.Equal(one.Margin!.Value, other.Margin!.Value, 1e-9);
    });

    [Fact]
    public void FibreInTwoPieces_DiffersByItsSpliceOnly() => Links.Sample(drawn =>
    {
        var whole = drawn.Channel;
        var spliced = whole with { Splices = whole.Splices + 1 };
        var before = Judge(drawn, whole);
        var after = Judge(drawn, spliced);
        var expected = before[CheckNames.ChannelLoss].Value!.Value + whole.SpliceLoss.Value.Value;
        Assert.Equal(expected, after[CheckNames.ChannelLoss].Value!.Value, 1e-9);
        string[] touched = [CheckNames.ChannelLoss, CheckNames.PowerBudget];
        foreach (var name in before.Keys.Except(touched))
        {
            var (was, now) = (before[name], after[name]);
            Assert.Equal((was.Value, was.Limit, was.Verdict), (now.Value, now.Limit, now.Verdict));
        }
    });

    [Fact]
    public void Attenuator_RelievesTheReceiverByWhatItTakes() => Links.Sample(drawn =>
    {
        var before = Judge(drawn, drawn.Channel);
        var after = Judge(drawn, drawn.Channel with { Attenuator = Decibels.From(3) });
        if (before[CheckNames.Overload].Margin is { } margin) Assert.Equal(margin + 3, after[CheckNames.Overload].Margin!.Value, 1e-9);
    });

    [Fact]
    public void Verdict_NeverPassesOnAnUnknownLimit() => Links.Sample(drawn =>
    {
        foreach (var check in Judge(drawn, drawn.Channel).Values)
            Assert.False(check.Verdict == Verdict.Pass && check.Unit.Length > 0 && check.Limit is null, check.Name);
    });

    /// <summary>Only light gets too strong on a shorter way; every other comparison that passes passes still.</summary>
    [Fact]
    public void ShorterLink_IsNeverLessProven()
    {
        var ways =
            from type in Limits.InterfaceTypes
            where !type.Lanes.IsEmpty
            from fibre in Limits.Fibres
            where fibre.Kind == type.FibreKind && type.Reach(fibre) is not null
            from plant in new[] { (0, 0.0), (1, 0.3), (4, 0.5), (8, 0.75) }
            select (type, fibre, plant);
        var proven = ways.Sum(way => ProvenLengths(way.type, way.fibre, way.plant.Item1, way.plant.Item2));
        Assert.True(proven > 2000, $"{proven} ways proven");
    }

    /// <summary>Walks from the shortest link past the longest, and counts the lengths that pass as a whole.</summary>
    private static int ProvenLengths(InterfaceType type, Fibre fibre, int connections, double loss)
    {
        string[] mayFail = [CheckNames.Overload, CheckNames.Damage];
        var full = (type.ReachEngineered ?? type.Reach(fibre))!.Value.Value;
        var proven = 0;
        Dictionary<string, Check>? shorter = null;
        foreach (var length in Enumerable.Range(0, 25).Select(i => i == 0 ? type.LengthMin?.Value ?? default : full * (i / 20.0)))
        {
            var judged = Judge(type, Way(fibre, length, connections, loss));
            if (shorter is not null)
            {
                foreach (var (name, check) in judged.Where(c => c.Value.Verdict == Verdict.Pass))
                {
                    var before = shorter[name];
                    Assert.True(before.Verdict == Verdict.Pass || (before.Verdict == Verdict.Fail && mayFail.Contains(name)),
                        $"{type.Name} over {fibre.Name}, {connections} pairs: {name} passes at {length} and not before: {before.Note}");
                }
            }
            if (Checks.Verdict(judged.Values) == Verdict.Pass) proven++;
            shorter = judged;
        }
        return proven;
    }

    private static Dictionary<string, Check> Judge(InterfaceType type, Channel channel) =>
        FibreLinkChecks.Of(Limits, channel, type, type).ToDictionary(c => c.Name);

    private static Channel Way(Fibre fibre, Length length, int connections, double loss) => new()
    {
        Fibre = fibre,
        Length = length,
        Connections = connections,
        ConnectionLoss = new Known<Decibels>(Decibels.From(loss), Citation.OfPlan),
        SpliceLoss = new Known<Decibels>(Decibels.From(0.1), Citation.OfPlan),
    };

    private static bool SameLimit(Check one, Check other) => one.Limit == other.Limit;

    private static Dictionary<string, Check> Judge(Drawn drawn, Channel channel) =>
        FibreLinkChecks.Of(Limits, channel, drawn.From, drawn.To).ToDictionary(c => c.Name);

    private sealed record Drawn(int Pair, double Metres, int Connections, double Loss, int Splices, double Reflectance)
    {
        public InterfaceType From => Pairs[Pair].From;

        public InterfaceType To => Pairs[Pair].To;

        public Channel Channel => new()
        {
            Fibre = From.FibreKind == FibreKind.SingleMode ? Limits.Fibre("OS2")! : Limits.Fibre("OM4")!,
            Length = Length.FromMetres(Metres),
            Connections = Connections,
            ConnectionLoss = new Known<Decibels>(Decibels.From(Loss), Citation.OfPlan),
            Splices = Splices,
            SpliceLoss = new Known<Decibels>(Decibels.From(0.1), Citation.OfPlan),
            Reflectance = new Known<Decibels>(Decibels.From(Reflectance), Citation.OfPlan),
        };
    }
}
