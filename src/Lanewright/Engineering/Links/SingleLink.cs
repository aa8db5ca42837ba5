using System.Collections.Immutable;
using Lanewright.Engineering.Copper;
using Lanewright.Model;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Links;

/// <summary>One link asked about by itself: a type and a way, no ports and no plan.</summary>
/// <param name="TypeName">The interface type, or both where the ends differ.</param>
/// <param name="MediumName">What it runs over.</param>
/// <param name="Checks">The comparisons.</param>
/// <param name="Loss">Loss of the channel, for fibre.</param>
/// <param name="Latency">Delay in one direction.</param>
public sealed record SingleLink(
    string TypeName, string MediumName, ImmutableArray<Check> Checks, ChannelLoss? Loss, Known<Duration> Latency)
{
    /// <summary>What all comparisons come to.</summary>
    public Verdict Verdict => Links.Checks.Verdict(Checks);

    /// <summary>The weakest mark of the values used.</summary>
    public Mark Mark => Links.Checks.Mark(Checks);

    /// <summary>A link over fibre.</summary>
    public static SingleLink OverFibre(StandardsLibrary standards, Channel channel, InterfaceType from, InterfaceType to)
    {
        var checks = ImmutableArray.CreateBuilder<Check>();
        checks.AddRange(MediaMatch.Of(from, to).Where(c => from.Name != to.Name));
        if (channel.Fibre.Kind != from.FibreKind)
            checks.Add(Check.Of(CheckNames.FibreKind, false, from.Definition, $"{from.Name} does not run on {channel.Fibre.Name}"));
        else checks.AddRange(FibreLinkChecks.Of(standards, channel, from, to));
        var name = from.Name == to.Name ? from.Name : from.Name + " / " + to.Name;
        return new SingleLink(name, channel.Fibre.Name, checks.ToImmutable(), ChannelLoss.Worse(channel, from, to),
            LinkLatency.OverFibre(standards, channel.Fibre, channel.Length, from.Fec));
    }

    /// <summary>A link over passive twinax.</summary>
    public static SingleLink OverTwinax(
        StandardsLibrary standards, CopperType type, WireGauge wire, Length length, ImmutableArray<CopperLimit> limits)
    {
        var copper = CopperChecks.Of(standards, type, wire.Awg, length, type.Rate, limits);
        ImmutableArray<Check> checks = [.. copper.All.Select(c => WithAssumption(c, wire)), Code(type, copper)];
        var latency = LinkLatency.OverCopper(standards, isTwistedPair: false, length, copper.NeededFec);
        return new SingleLink(type.Name, "DAC", checks, null, latency);
    }

    private static Check WithAssumption(Check check, WireGauge wire) => check.Name == CheckNames.CopperLoss && wire.Assumption.Length > 0
        ? check with { Note = $"{check.Note}, {wire.Assumption}" }
        : check;

    /// <summary>A link over twisted pair.</summary>
    public static SingleLink OverTwistedPair(StandardsLibrary standards, CopperType type, Length length) => new(
        type.Name,
        "CAT6A",
        [Check.AtMost(CheckNames.Reach, length.Metres, type.Reach?.As(l => l.Metres), "m")],
        null,
        LinkLatency.OverCopper(standards, isTwistedPair: true, length, type.Fec));

    private static Check Code(CopperType type, CopperChecks copper) => copper.NeededFec == FecSide.None
        ? Check.Of(CheckNames.CopperFec, true, type.Definition, "this loss needs no code")
        : Check.If(CheckNames.CopperFec, type.Definition, $"both ports must run {copper.NeededFec}");
}
