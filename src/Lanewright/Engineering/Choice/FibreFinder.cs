using System.Collections.Concurrent;
using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Links;
using Lanewright.Standards;

namespace Lanewright.Engineering.Choice;

/// <summary>Ways to make a link with two modules and a cord between them.</summary>
internal sealed class FibreFinder(FinderContext context)
{
    /// <summary>Fibre considered where the plan names none.</summary>
    private static readonly ImmutableArray<string> UsualFibres = ["OM4", "OS2"];

    /// <summary>Comparisons whose limits belong to the cage alone.</summary>
    private static readonly ImmutableHashSet<string> OfTheCage =
        [CheckNames.ModulePower, CheckNames.HighPower, CheckNames.PortMode, CheckNames.HostInterface];

    private readonly FibreJudge judge = new(context);

    // The types at the ends are few, the classes of links many.
    private readonly ConcurrentDictionary<(InterfaceType From, InterfaceType To), (ImmutableArray<Check> Checks, bool Fails)> media = [];

    // A search for what to buy asks about the same few cages over every length.
    private readonly ConcurrentDictionary<EndKey, List<ModuleEnd>> ends = [];

    /// <summary>All pairs of modules that could join the ends; named modules are judged even when they do not fit.</summary>
    public IEnumerable<Solution> Find(LinkClass link)
    {
        var statement = link.Statement;
        if (statement.Assembly is not null || statement.CopperType is not null) yield break;
        var fromEnds = Ends(link, link.From, statement.From, "from");
        var toEnds = Ends(link, link.To, statement.To, "to");
        foreach (var from in fromEnds)
        {
            foreach (var to in toEnds)
            {
                var areNamed = statement.From.Module is not null && statement.To.Module is not null;
                var (match, fails) = Match(from.Type, to.Type);
                if (!areNamed && fails) continue;
                foreach (var fibre in Fibres(link, from.Type))
                    foreach (var solution in judge.Judge(link, from, to, match, fibre)) yield return solution;
            }
        }
    }

    private (ImmutableArray<Check> Checks, bool Fails) Match(InterfaceType from, InterfaceType to)
    {
        return media.GetOrAdd((from, to), Compare);

        static (ImmutableArray<Check>, bool) Compare((InterfaceType From, InterfaceType To) types)
        {
            var checks = MediaMatch.Of(types.From, types.To);
            return (checks, Checks.Verdict(checks) == Verdict.Fail);
        }
    }

    /// <summary>What may sit at an end; remembered where nothing is said of it.</summary>
    private List<ModuleEnd> Ends(LinkClass link, EndSpec spec, LinkEnd end, string side)
    {
        var isOpen = end is { Module: null, UsesAdapter: false, Fec: null, Autonegotiation: null };
        return isOpen && link.Statement.Type is null && spec.Elsewhere.IsEmpty
            ? ends.GetOrAdd(new EndKey(spec.Cage, spec.Ways, spec.PowerLimit, link.Statement.Rate, side), _ => Found())
            : Found();

        List<ModuleEnd> Found() => FindEnds(link, spec, end, side);
    }

    private List<ModuleEnd> FindEnds(LinkClass link, EndSpec spec, LinkEnd end, string side)
    {
        var use = FinderContext.UseOf(spec, end, link.Statement.Rate);
        var ends = new List<ModuleEnd>();
        foreach (var module in context.Catalogue.Modules)
        {
            if (end.Module is not null && module != end.Module) continue;
            if (end.Module is null && !Fits(use, module)) continue;
            foreach (var application in Applications(link, module, spec.Ways, end.Module is not null))
            {
                if (application.Optical is not { } type) continue;
                var checks = HostSideChecks.OfModule(use, module, application, side);
                if (spec.Ways > 1) checks = [.. checks, SharedFibre(module, type, spec.Ways, side)];
                var candidate = new ModuleEnd(module, application, type, use, checks);
                if (end.Module is not null || IsTypeNamed(link) || MayWork(candidate, spec, side)) ends.Add(candidate);
            }
        }
        return ends;
    }

    /// <summary>What only this cage keeps out is listed with its reason: another port, or more power, would cure it.</summary>
    private static bool MayWork(ModuleEnd candidate, EndSpec spec, string side)
    {
        var failing = candidate.Checks.Where(c => c.Verdict == Verdict.Fail && !c.IsAdvice).Select(c => c.Name).ToHashSet();
        if (failing.All(name => name == CheckNames.ModulePower)) return true;
        if (!failing.IsSubsetOf(OfTheCage)) return false;
        return spec.Elsewhere.Any(cage =>
        {
            var there = candidate.Use with { Cage = cage, PowerLimit = cage.HighestLimit };
            return Checks.Verdict(HostSideChecks.OfModule(there, candidate.Module, candidate.Application, side)) != Verdict.Fail;
        });
    }

    private static bool IsTypeNamed(LinkClass link) => link.Statement.Type is not null;

    private static bool Fits(EndUse use, ModuleModel module) => use.UsesAdapter
        ? use.Cage.FormFactor.AcceptsByAdapter.Contains(module.FormFactor.Name)
        : use.Cage.FormFactor.Accepts.Contains(module.FormFactor.Name);

    /// <summary>Applications of the right rate, and of the type the statement names: that of the port, or that of the whole
    /// cage.</summary>
    private static List<Application> Applications(LinkClass link, ModuleModel module, int ways, bool isNamed)
    {
        var optical = module.Applications.Where(a => a.Optical is not null).ToList();
        var usable = optical.Where(a => a.Rate == link.Statement.Rate && (ways == 1 ? a.Instances == 1 : a.Instances >= ways)).ToList();
        if (link.Statement.Type is { } type)
        {
            var isOfPort = type.Rate == link.Statement.Rate;
            usable = isOfPort
                ? [.. usable.Where(a => a.MediaName == type.Name)]
                // A type of another rate is that of a whole split cage; where none is split, nothing runs it.
                : link.Shape == FanShape.Single ? []
                : ways > 1 && optical.Any(a => a.MediaName == type.Name) ? usable : [.. usable.Where(_ => ways == 1)];
        }
        // A named module is judged by what it has, and the comparisons say what is missing.
        if (usable.Count == 0 && isNamed && optical.Count > 0) return [optical[0]];
        return usable;
    }

    private static Check SharedFibre(ModuleModel module, InterfaceType type, int ways, string side)
    {
        var whole = module.Applications[0].Optical ?? type;
        var openings = ModuleOpening.Of(module).Count;
        var shares = whole.WavelengthsPerFibre > 1 && openings < ways;
        var note = shares
            ? $"{whole.Name} sends {whole.WavelengthsPerFibre} wavelengths on one fibre; they cannot be taken apart into {ways} ports"
            : "";
        return Check.Of(CheckNames.SharedFibre, !shares, whole.Definition, note) with { End = side };
    }

    private IEnumerable<Fibre> Fibres(LinkClass link, InterfaceType type)
    {
        var statement = link.Statement;
        if (link.Through is { } way)
        {
            if (context.Standards.Fibre(way.Legs[0].Trunk.Cable.Fibre) is { } laid && laid.Kind == type.FibreKind
                && FinderContext.Allows(statement, laid.Name))
            {
                yield return laid;
            }
            yield break;
        }
        var names = statement.Cord is { } cord ? [cord.Fibre] : statement.Media.IsEmpty ? UsualFibres : statement.Media;
        foreach (var name in names)
            if (context.Standards.Fibre(name) is { } fibre && fibre.Kind == type.FibreKind) yield return fibre;
        // A cord of the wrong glass is judged, not passed over.
        if (statement.Cord is { } named
            && context.Standards.Fibre(named.Fibre) is { } other
            && other.Kind != type.FibreKind)
        {
            yield return other;
        }
    }
}
