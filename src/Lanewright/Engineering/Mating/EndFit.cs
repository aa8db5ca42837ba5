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
        if (end.Cage is not { } cage || cage.Accepts.Contains(module.Name)) return;
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
        var fits = Interfaces().Where(i => i.Lanes * ways <= module.Lanes && i.Baud <= module.LaneBaudMax).ToImmutableArray();
        if (fits.IsEmpty)
        {
            var article = HostSideChecks.Article(module.Name);
            reasons.Add(new MatingReason(CheckNames.HostInterface,
                $"no electrical interface carries {Ports()} through the {module.Lanes} contacts of {article} module"));
            return;
        }
        if (end.Cage is null)
        {
            ChooseCode(module, fits[0]);
            return;
        }
        // An adapter takes one part of what the cage could be split into.
        var isAdapted = !end.Cage.Accepts.Contains(module.Name);
        var modes = standards.CageModes(end.CageLanes);
        var usable =
            from mode in modes
            where mode.Possible && mode.Rate == rate && (mode.Ways == ways || isAdapted)
            from i in fits
            where i.Lanes == mode.LanesPerPort && i.Signal == mode.Signal
            orderby mode.Condition.Length
            select (Mode: mode, Interface: i);
        if (usable.Any())
        {
            var (mode, chosen) = usable.First();
            if (mode.Condition.Length > 0) conditions.Add($"{end.Cage.Name} with {end.CageLanes}: {mode.Condition}");
            ChooseCode(module, chosen);
            return;
        }
        reasons.Add(new MatingReason(CheckNames.HostInterface,
            $"a cage of {end.CageLanes} does not run {Ports()} over {string.Join(" or ", fits.Select(i => i.Name))}"));
    }

    /// <summary>A module behind NRZ lanes that sends four levels ends the host's code and makes its own.</summary>
    private void ChooseCode(FormFactor module, Electrical electrical)
    {
        if (end.Optical is not { } type) return;
        HasOwnFec = electrical.Signal.Modulation == Modulation.Nrz && type.Signal.Modulation == Modulation.Pam4 && type.Fec != FecSide.None
            && electrical.Fec == HostInterface.FecOfMedia;
        if (HasOwnFec) conditions.Add($"the {module.Name} module makes {type.Fec} itself: set the host's code off at that end");
    }

    private string Ports() => ways > 1 ? $"{ways}x{rate}" : rate.ToString();

    private IEnumerable<Electrical> Interfaces()
    {
        if (end.Copper is { } copper)
        {
            yield return new Electrical(copper.Name, copper.Lanes / Math.Max(1, ways), copper.Signal, copper.Fec);
            yield break;
        }
        foreach (var host in standards.HostInterfaces.Where(h => h.Rate == rate))
            yield return new Electrical(host.Name, host.Lanes, host.Signal, host.Fec);
    }

    private sealed record Electrical(string Name, int Lanes, LaneSignal Signal, string Fec)
    {
        public Baud Baud => Signal.Baud;
    }
}
