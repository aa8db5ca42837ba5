using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
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
        var (modules, modulesServing, fibres, fibresServing) = (0L, 0L, 0L, 0L);
        foreach (var line in lines)
        {
            foreach (var (module, application, count) in new[]
            {
                (line.Solution.FromModule, line.Solution.FromApplication, line.FromCages),
                (line.Solution.ToModule, line.Solution.ToApplication, line.ToCages),
            })
            {
                if (module is null || application is null) continue;
                modules += count;
                if (Serves(module, application)) modulesServing += count;
            }
            if (line.Solution.FromApplication?.Optical is not { } type || line.Solution.Channel is not { } channel) continue;
            fibres += line.Links * type.Fibres;
            if (HasSuccessor(type, channel.Fibre, line.Solution.Length)) fibresServing += line.Links * type.Fibres;
        }
        return new NextLaneRate(modules, modulesServing, fibres, fibresServing);
    }

    /// <summary>Whether a cage whose silicon has the next lane rate takes the module and still runs its lanes.</summary>
    private bool Serves(ModuleModel module, Application application)
    {
        var own = application.Host.Signal;
        var next = signals.FirstOrDefault(s => BitsOf(s) > BitsOf(own));
        return next != default && cages.Any(c =>
            c.Signals.Contains(next) && c.Signals.Contains(own) && c.FormFactor.Accepts.Contains(module.FormFactor.Name));
    }

    /// <summary>Whether an interface type with the next step of lanes on the medium runs over the same glass.</summary>
    private bool HasSuccessor(InterfaceType type, Fibre fibre, Length length) => context.Standards.InterfaceTypes.Any(next =>
        LaneOf(next) > LaneOf(type)
        && (!next.IsDraft || context.Policy.AllowsDrafts)
        && next.FibreKind == type.FibreKind
        && next.Fibres == type.Fibres
        && next.Connector == type.Connector
        && next.WavelengthsPerFibre == type.WavelengthsPerFibre
        && next.Reach(fibre) is { } reach && reach.Value >= length);

    private static long LaneOf(InterfaceType type) => type.Rate.BitsPerSecond / Math.Max(1, type.MediaLanes);

    private static double BitsOf(LaneSignal signal) => signal.Baud.Gigabaud * (signal.Modulation == Modulation.Nrz ? 1 : 2);
}
