using System.Collections.Immutable;
using Lanewright.Engineering.Choice;

namespace Lanewright.Engineering.Plant;

/// <summary>The cords of a way as far as they lead fibres.</summary>
/// <param name="Kinds">What each joins, from the first end of the link on.</param>
/// <param name="Positions">Positions of each cord's array; 0 where it has none.</param>
/// <param name="Lanes">Lanes each way of parallel optics; 0 where nothing says fewer than the array takes.</param>
/// <param name="Part">Which port of a split cage the link is, from 1; 0 where no cage is taken apart on the way.</param>
public sealed record WayCords(ImmutableArray<PatchKind> Kinds, ImmutableArray<int> Positions, int Lanes, int Part)
{
    /// <summary>The cords of a solution.</summary>
    /// <param name="solution">How a link is made.</param>
    /// <param name="part">Which port of a split cage it is, from 1.</param>
    public static WayCords Of(Solution solution, int part) => Of(solution.Patching, FibresOf(solution), part);

    /// <summary>The cords of a way.</summary>
    /// <param name="patching">The cords, from the first end of the link on.</param>
    /// <param name="fibres">Fibres of the module that has most.</param>
    /// <param name="part">Which port of a split cage the link is, from 1.</param>
    public static WayCords Of(ImmutableArray<PatchCord> patching, int fibres, int part)
    {
        var startsDuplex = patching[0].Kind is PatchKind.Duplex or PatchKind.Merge;
        var endsDuplex = patching[^1].Kind is PatchKind.Duplex or PatchKind.Split;
        return new WayCords(
            [.. patching.Select(p => p.Kind)], [.. patching.Select(p => p.Positions)], fibres / 2, startsDuplex != endsDuplex ? part : 0);
    }

    /// <summary>Fibres of the module that has most.</summary>
    public static int FibresOf(Solution solution) => Math.Max(
        FibresOf(solution.FromModule, solution.FromApplication), FibresOf(solution.ToModule, solution.ToApplication));

    /// <summary>Fibres that the module as a whole takes.</summary>
    public static int FibresOf(Model.Catalogues.ModuleModel? module, Model.Catalogues.Application? application) =>
        (module?.Applications.FirstOrDefault(a => a.Instances == 1)?.Optical ?? application?.Optical)?.Fibres ?? 0;
}
