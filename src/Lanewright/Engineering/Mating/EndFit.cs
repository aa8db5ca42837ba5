using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model.Links;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Mating;

/// <summary>Whether the type, module and cage of one end go together for ports of a rate.</summary>
internal sealed class EndFit
{
    private readonly StandardsLibrary standards;
    private readonly PortDescription end;
    private readonly BitRate rate;
    private readonly int ways;
    private readonly List<string> conditions = [];
    private readonly List<MatingReason> reasons = [];

    private EndFit(StandardsLibrary standards, PortDescription end, BitRate rate, int ways)
    {
        this.standards = standards;
        this.end = end;
        this.rate = rate;
        this.ways = ways;
    }

    /// <summary>What has to be seen to at this end.</summary>
    public IReadOnlyList<string> Conditions => conditions;

    /// <summary>Why this end never works.</summary>
    public IReadOnlyList<MatingReason> Reasons => reasons;

    /// <summary>Whether the module makes the code of the wire itself.</summary>
    public bool HasOwnFec { get; private set; }

    /// <summary>Fits an end whose module is split into so many ports of a rate.</summary>
    public static EndFit Of(StandardsLibrary standards, PortDescription end, BitRate rate, int ways)
    {
        var fit = new EndFit(standards, end, rate, ways);
        if (end.Module is not { } module) return fit;
        fit.Mechanics(module);
        fit.Electrics(module);
        return fit;
    }

    private void Mechanics(FormFactor module)
    {
        if (end.Cage is not { } cage) return;
        if (cage.Accepts.Contains(module.Name))
        {
            if (module.LaneBitsMax > cage.LaneBitsMax)
                conditions.Add($"the {module.Name} module must be made for the slower lanes of the {cage.Name} cage as well");
            return;
        }
        if (cage.AcceptsByAdapter.Contains(module.Name))
        {
            conditions.Add($"an adapter takes the {module.Name} module into the {cage.Name} cage; the platform must know it");
            return;
        }
        reasons.Add(new MatingReason(CheckNames.ModuleFit,
            $"{HostSideChecks.Article(module.Name)} module does not go into {HostSideChecks.Article(cage.Name)} cage"));
    }

    private void Electrics(FormFactor module)
    {
        // A socket has no module to ask, and of the slower twisted pair no electrical interface is tabled.
        if (end.Copper?.IsTwistedPair == true && (module.Name == "RJ45" || standards.HostInterfaces.All(h => h.Rate != rate))) return;
        var within = Interfaces(module).Where(i => i.Lanes * ways <= module.Lanes).ToImmutableArray();
        if (within.IsEmpty)
        {
            var article = HostSideChecks.Article(module.Name);
            reasons.Add(new MatingReason(CheckNames.HostInterface,
                $"no electrical interface carries {Ports()} through the {module.Lanes} contacts of {article} module"));
            return;
        }
        var offered = end.Cage is null ? WithoutCage(within) : InCage(module, within);
        if (offered.IsEmpty)
        {
            reasons.Add(new MatingReason(CheckNames.HostInterface,
                $"a cage of {end.CageLanes} does not run {Ports()} over {string.Join(" or ", within.Select(i => i.Name))}"));
            return;
        }
        var usable = offered.Where(o => o.Interface.Gearbox.Exists).OrderBy(o => o.Interface.Gearbox.MakesCode).ToList();
        if (usable.Count == 0)
        {
            foreach (var note in offered.Select(o => o.Interface.Gearbox.Note).Distinct())
                reasons.Add(new MatingReason(CheckNames.Gearbox, note));
            return;
        }
        Use(module, usable[0].Condition, usable[0].Interface);
    }

    /// <summary>Where no cage is named, the body's own lanes are meant: the fastest it speaks, of those that cages run at all.</summary>
    private ImmutableArray<(string Condition, Electrical Interface)> WithoutCage(ImmutableArray<Electrical> within)
    {
        var signals = standards.CageNames.SelectMany(name => standards.CageModes(name)).Select(m => m.Signal).ToHashSet();
        var run = within.Where(i => signals.Contains(i.Signal)).ToList();
        return [.. run.Where(i => i.Lanes == run.Min(r => r.Lanes) || i.Gearbox.Kind == GearboxKind.Straight).Select(i => ("", i))];
    }

    /// <summary>What the cage's usual list and the module have in common, fewest conditions first.</summary>
    private ImmutableArray<(string Condition, Electrical Interface)> InCage(FormFactor module, ImmutableArray<Electrical> within)
    {
        // An adapter takes one part of what the cage could be split into.
        var isAdapted = end.Cage?.Accepts.Contains(module.Name) == false;
        return
        [
            .. from mode in standards.CageModes(end.CageLanes)
               where mode.Possible && mode.Rate == rate && (mode.Ways == ways || isAdapted)
               from i in within
               where i.Lanes == mode.LanesPerPort && i.Signal == mode.Signal
               orderby mode.Condition.Length
               select (mode.Condition, i),
        ];
    }

    /// <summary>Says what has to be listed, and where the code is made when that is not plain.</summary>
    private void Use(FormFactor module, string condition, Electrical electrical)
    {
        if (condition.Length > 0)
        {
            var isPlain = electrical.Fec is FecSide.None or HostInterface.FecOfMedia;
            var code = isPlain ? "" : $"; the host runs {electrical.Fec} on {electrical.Name}";
            conditions.Add($"{end.Cage?.Name} with {end.CageLanes}: {condition}{code}");
        }
        if (end.Optical is not { } type || !electrical.Gearbox.MakesCode) return;
        HasOwnFec = true;
        if (electrical.Fec == HostInterface.FecOfMedia)
            conditions.Add($"the {module.Name} module makes {type.Fec} itself: set the host's code off at that end");
    }

    private string Ports() => ways > 1 ? $"{ways}x{rate}" : rate.ToString();

    private IEnumerable<Electrical> Interfaces(FormFactor module)
    {
        if (end.Copper is { IsTwistedPair: false } copper)
        {
            if (module.Carries(copper.Signal))
                yield return new Electrical(copper.Name, copper.Lanes / Math.Max(1, ways), copper.Signal, copper.Fec, Wire);
            yield break;
        }
        foreach (var host in standards.HostInterfaces.Where(h => h.Rate == rate && module.Speaks(h.Signal)))
        {
            var gearbox = end.Optical is { } type ? Gearbox.Between(host, type, ways) : Wire;
            yield return new Electrical(host.Name, host.Lanes, host.Signal, host.Fec, gearbox);
        }
    }

    /// <summary>Wire runs straight through.</summary>
    private static readonly Gearbox Wire = new(GearboxKind.Straight);

    private sealed record Electrical(string Name, int Lanes, LaneSignal Signal, string Fec, Gearbox Gearbox);
}
