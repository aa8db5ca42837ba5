using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Copper;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Choice;

/// <summary>Ways to make a link with a cable that has its ends on.</summary>
internal sealed class AssemblyFinder(FinderContext context)
{
    private static readonly ImmutableArray<string> CodesByStrength = [FecSide.None, "BASE-R", "RS(528,514)", "RS(544,514)"];

    /// <summary>All assemblies that could join the ends, fit or not; a named one is judged even when it does not fit.</summary>
    public IEnumerable<Solution> Find(LinkClass link)
    {
        var statement = link.Statement;
        if (statement.Type is not null || statement.Cord is not null) yield break;
        if (statement.From.Module is not null || statement.To.Module is not null) yield break;
        foreach (var cable in context.Catalogue.Assemblies)
        {
            var isNamed = statement.Assembly is not null;
            if (isNamed ? statement.Assembly != cable : !IsCandidate(link, cable)) continue;
            if (link.Needed is not { } needed) continue;
            foreach (var ordered in context.LengthsFor(link, cable)) yield return Judge(link, cable, isNamed, needed, ordered);
        }
    }

    private static bool IsCandidate(LinkClass link, AssemblyModel cable)
    {
        if (!FinderContext.Allows(link.Statement, MediumName(cable.Medium))) return false;
        if (link.Statement.CopperType is { } type && cable.Type != type) return false;
        if (link.Shape == FanShape.BothEnds || cable.Legs != link.Legs || cable.LegRate != LegRate(link)) return false;
        var (near, far) = Ends(link, cable);
        return near.Cage.FormFactor.Accepts.Contains(cable.Near.Name) && far.Cage.FormFactor.Accepts.Contains(cable.Far.Name);
    }

    /// <summary>A straight cable between cages split alike carries all their ports.</summary>
    private static BitRate LegRate(LinkClass link) =>
        link.Shape == FanShape.Straight ? link.Statement.Rate * link.From.Ways : link.Statement.Rate;

    private static (EndSpec Near, EndSpec Far) Ends(LinkClass link, AssemblyModel cable)
    {
        var turned = link.Shape == FanShape.ToEnd
            || (cable.Legs == 1
                && !link.From.Cage.FormFactor.Accepts.Contains(cable.Near.Name)
                && link.To.Cage.FormFactor.Accepts.Contains(cable.Near.Name));
        return turned ? (link.To, link.From) : (link.From, link.To);
    }

    private Solution Judge(LinkClass link, AssemblyModel cable, bool isNamed, Length needed, Length? ordered)
    {
        var statement = link.Statement;
        var length = ordered ?? needed;
        var (near, _) = Ends(link, cable);
        var nearIsFrom = ReferenceEquals(near, link.From);
        var from = FinderContext.UseOf(link.From, statement.From, statement.Rate);
        var to = FinderContext.UseOf(link.To, statement.To, statement.Rate);
        var checks = ImmutableArray.CreateBuilder<Check>();
        checks.AddRange(HostSide(from, cable, nearIsFrom, "from", link));
        checks.AddRange(HostSide(to, cable, !nearIsFrom, "to", link));
        if (isNamed) checks.Add(Shape(link, cable));
        var (transmission, code) = Transmission(link, cable, length, from, to);
        checks.AddRange(transmission);
        var fec = FecChecks.OfCable(from, to, code, cable.Type?.Definition ?? cable.Shows(isNear: true).Definition);
        checks.AddRange(fec.All);
        var negotiates = cable.Type is { } type && StartupChecks.Runs(from, to, type);
        checks.AddRange(cable.Type is { } copper
            ? StartupChecks.OnCopper(from, to, copper)
            : StartupChecks.WithoutNegotiation(from, to));
        // Where the type itself does not reach, no cable would be made that long.
        if (ordered is null && cable.Type is { } passive && !(passive.Reach?.Value < needed)) checks.Add(Longest(cable, needed));
        checks.AddRange(Bends(link, cable));
        var latency = Latency(cable, length, code);
        var adapters = context.Adapters((from, nearIsFrom ? cable.Near : cable.Far), (to, nearIsFrom ? cable.Far : cable.Near));
        var isDraft = cable.Type?.IsDraft == true;
        var isAskedFor = isNamed || statement.CopperType is not null;
        checks.AddRange(context.Common(link, MediumName(cable.Medium), isDraft, isAskedFor, length, latency));
        return new Solution
        {
            Name = $"{cable.Name} {length}",
            Medium = cable.Medium,
            MediumName = MediumName(cable.Medium),
            TypeName = cable.TypeName,
            Cable = cable,
            IsTurned = !nearIsFrom,
            Adapters = adapters,
            Length = length,
            Checks = checks.ToImmutable(),
            Parts = FinderContext.WithoutExisting(
                statement, [new PartUse(cable, length, link.LinksPerCable), .. FinderContext.Uses(adapters)]),
            FromFec = fec.FromPort,
            ToFec = fec.ToPort,
            Autonegotiates = negotiates,
            Latency = latency,
            LinksPerCable = link.LinksPerCable,
            Power = EndPower(cable, link),
        };
    }

    private static Watts EndPower(AssemblyModel cable, LinkClass link)
    {
        var farLinks = link.Shape == FanShape.Straight ? link.LinksPerCable : 1;
        return Watts.From((cable.NearPower.Value / link.LinksPerCable) + (cable.FarPower.Value / farLinks));
    }

    private static Check Shape(LinkClass link, AssemblyModel cable)
    {
        if (link.Shape == FanShape.BothEnds)
            return Check.Of(
                CheckNames.FanOut, false, CatalogueFacts.SourceOf(cable),
                "both cages are split and their parts are mixed: no assembly is made for that");
        var fits = cable.Legs == link.Legs && cable.LegRate == LegRate(link);
        return Check.Of(CheckNames.FanOut, fits, CatalogueFacts.SourceOf(cable),
            fits ? "" : $"{cable.Name} has {cable.Legs} legs of {cable.LegRate}; the link needs {link.Legs} of {LegRate(link)}");
    }

    private static ImmutableArray<Check> HostSide(EndUse end, AssemblyModel cable, bool isNear, string side, LinkClass link)
    {
        var lanes = cable.Type is { } type ? ElectricalLanes.Of(type) : ElectricalLanes.Of(cable.Shows(isNear));
        if (link.Shape == FanShape.Straight) lanes = lanes with { Count = Math.Max(1, lanes.Count / link.From.Ways) };
        var power = new Known<Watts>(isNear ? cable.NearPower : cable.FarPower, CatalogueFacts.SourceOf(cable));
        return HostSideChecks.OfAssembly(end, isNear ? cable.Near : cable.Far, power, lanes, side);
    }

    private (ImmutableArray<Check> Checks, string Code) Transmission(
        LinkClass link, AssemblyModel cable, Length length, EndUse from, EndUse to)
    {
        if (cable.Type is { } type)
        {
            var whole = cable.LegRate * cable.Legs;
            var copper = CopperChecks.Of(context.Standards, type, cable.Gauge, length, whole, context.Policy.CopperLimits);
            return (copper.All, Common(copper.NeededFec, from, to) ?? copper.NeededFec);
        }
        var stated = cable.Shows(isNear: true).Fec;
        var code = stated == HostInterface.FecOfMedia ? StrongestNrz(from, to) : stated;
        return ([Longest(cable, length)], code);
    }

    /// <summary>A length against the longest the catalogue holds; of an active cable nothing else is known.</summary>
    private static Check Longest(AssemblyModel cable, Length length)
    {
        var most = cable.Lengths[^1];
        var check = Check.AtMost(CheckNames.Reach, length.Metres, new Known<double>(most.Metres, CatalogueFacts.SourceOf(cable)), "m");
        return check.Verdict == Verdict.Fail ? check with { Note = $"the catalogue has {cable.Name} up to {most}" } : check;
    }

    /// <summary>The weakest code both ports have that is not weaker than the one needed.</summary>
    private static string? Common(string needed, EndUse from, EndUse to)
    {
        var first = Math.Max(0, CodesByStrength.IndexOf(needed));
        // A code of another lane family is no stronger version of this one.
        var last = needed == "RS(544,514)" ? CodesByStrength.Length : CodesByStrength.Length - 1;
        for (var i = first; i < last; i++)
            if (Has(from, CodesByStrength[i]) && Has(to, CodesByStrength[i])) return CodesByStrength[i];
        return null;
    }

    private static string StrongestNrz(EndUse from, EndUse to) =>
        Has(from, "RS(528,514)") && Has(to, "RS(528,514)") ? "RS(528,514)"
        : Has(from, "BASE-R") && Has(to, "BASE-R") ? "BASE-R"
        : FecSide.None;

    private static bool Has(EndUse end, string code) => end.Cage.Fec.IsEmpty || end.Cage.Fec.Contains(code);

    private IEnumerable<Check> Bends(LinkClass link, AssemblyModel cable)
    {
        if (link.FromRack is { } from)
            foreach (var check in BendSpace.OfAssembly(context.Standards, cable, from, "from")) yield return check;
        if (link.ToRack is { } to && to != link.FromRack)
            foreach (var check in BendSpace.OfAssembly(context.Standards, cable, to, "to")) yield return check;
    }

    private Known<Duration> Latency(AssemblyModel cable, Length length, string code) => cable.Medium == CableMedium.Aoc
        ? LinkLatency.OverFibre(context.Standards, context.Standards.Fibres.First(f => f.Kind == FibreKind.MultiMode), length, code)
        : LinkLatency.OverCopper(context.Standards, isTwistedPair: false, length, code);

    /// <summary>The name plans give a medium.</summary>
    public static string MediumName(CableMedium medium) => medium switch
    {
        CableMedium.Dac => "DAC",
        CableMedium.Aec => "AEC",
        CableMedium.Aoc => "AOC",
        _ => throw new ArgumentOutOfRangeException(nameof(medium)),
    };
}
