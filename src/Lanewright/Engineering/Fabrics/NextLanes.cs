using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Standards;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Tells what of a design still serves when lanes become one step faster: by rows of cages and of interface types.</summary>
internal sealed class NextLanes
{
    private readonly FinderContext context;
    private readonly ImmutableArray<CageModel> cages;
    private readonly ImmutableArray<LaneSignal> signals;

    public NextLanes(FinderContext context)
    {
        this.context = context;
        cages =
        [
            .. context.Catalogue.Devices.SelectMany(d => d.Banks).Concat(context.Catalogue.Cards.SelectMany(c => c.Banks))
                .Select(b => b.Cage)
                .Distinct(ReferenceEqualityComparer.Instance)
                .Cast<CageModel>(),
        ];
        signals = [.. cages.SelectMany(c => c.Signals).Distinct().OrderBy(BitsOf)];
    }

    /// <summary>What of the links of a design still serves.</summary>
    public NextLaneRate Of(IEnumerable<TallyLine> lines)
    {
        var kinds = new List<NextLaneKind>();
        foreach (var line in lines)
        {
            foreach (var (module, application, count) in new[]
            {
                (line.Solution.FromModule, line.Solution.FromApplication, line.FromCages),
                (line.Solution.ToModule, line.Solution.ToApplication, line.ToCages),
            })
                if (module is not null && application is not null) kinds.Add(KindOf(module, application, count));
            if (line.Solution.FromApplication?.Optical is { } type && line.Solution.Channel is { } channel)
                kinds.Add(KindOf(type, channel, line.Links * type.Fibres));
        }
        return new NextLaneRate(
        [
            .. kinds.GroupBy(k => k with { Count = 0 }).Select(g => g.Key with { Count = g.Sum(k => k.Count) }).Where(k => k.Count > 0)
                .OrderBy(k => k.IsFibre).ThenByDescending(k => k.Count).ThenBy(k => k.Name, StringComparer.Ordinal),
        ]);
    }

    /// <summary>Whether a cage whose silicon has the next lane rate takes the module and still runs its lanes.</summary>
    private NextLaneKind KindOf(ModuleModel module, Application application, long count)
    {
        var own = application.Host.Signal;
        var (name, form) = ($"{module.FormFactor.Name} of {NameOf(own)} lanes", module.FormFactor.Name);
        var next = signals.FirstOrDefault(s => BitsOf(s) > BitsOf(own));
        if (next == default) return new NextLaneKind(name, false, false, $"no cage has lanes faster than {NameOf(own)}", count);
        var takers = cages.Where(c => c.Signals.Contains(next) && c.FormFactor.Accepts.Contains(form)).ToList();
        if (takers.Find(c => c.Signals.Contains(own)) is { } cage)
            return new NextLaneKind(name, false, true, $"cages {cage.FormFactor.Name} of {NameOf(next)} lanes take them", count);
        return new NextLaneKind(name, false, false, takers.Count == 0
            ? $"no cage of {NameOf(next)} lanes takes {form}"
            : $"cages of {NameOf(next)} lanes that take {form} no longer run {NameOf(own)}", count);
    }

    /// <summary>Whether an interface type with faster lanes runs over the same glass as it lies.</summary>
    private NextLaneKind KindOf(InterfaceType type, Channel channel, long count)
    {
        var name = $"{type.Name} over {channel.Fibre.Name}";
        var faster = context.Standards.InterfaceTypes.Where(t => LaneOf(t) > LaneOf(type) && t.Reach(channel.Fibre) is not null).ToList();
        var alike = faster.Where(t => t.Fibres == type.Fibres && t.Connector == type.Connector
            && t.WavelengthsPerFibre == type.WavelengthsPerFibre).ToList();
        if (alike.Count == 0)
            return new NextLaneKind(name, true, false, faster.Count == 0
                ? $"no type of faster lanes runs over {channel.Fibre.Name}"
                : "types of faster lanes need other fibres, connectors or wavelengths", count);
        var fits = alike.Where(t => t.Reach(channel.Fibre) is { } reach && reach.Value >= channel.Length && Bears(t, channel)).ToList();
        if (fits.Find(t => !t.IsDraft || context.Policy.AllowsDrafts) is { } next)
            return new NextLaneKind(name, true, true, $"{next.Name} runs over them", count);
        return new NextLaneKind(name, true, false, fits.Count > 0
            ? $"{fits[0].Name} is a draft, and the policy does not allow drafts"
            : $"{alike[0].Name} does not reach as far or bear the loss", count);
    }

    /// <summary>Whether a type bears what the channel loses; one whose limit is not known is not said to.</summary>
    private static bool Bears(InterfaceType type, Channel channel) =>
        type.LossMax(channel.Fibre) is { } most && ChannelLoss.Of(channel, type) is { } loss && loss.Maximum <= most.Value;

    private string NameOf(LaneSignal signal) =>
        context.Standards.SignalNames.FirstOrDefault(n => context.Standards.Signal(n) == signal) ?? signal.ToString();

    private static long LaneOf(InterfaceType type) => type.Rate.BitsPerSecond / Math.Max(1, type.MediaLanes);

    private static double BitsOf(LaneSignal signal) => signal.Baud.Gigabaud * (signal.Modulation == Modulation.Nrz ? 1 : 2);
}
