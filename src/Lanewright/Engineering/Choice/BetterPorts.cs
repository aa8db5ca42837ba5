using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>Finds the other ports of a device at which a module works that its own port refuses.</summary>
public static class BetterPorts
{
    /// <summary>Ports named before the rest is left to "...".</summary>
    private const int MostNamed = 3;

    /// <summary>What is wrong at the port of an end and which ports would do, with their numbers as printed.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="link">The links; the first of them stands for all.</param>
    /// <param name="solution">What was judged.</param>
    /// <param name="failing">The comparison that fails at one end.</param>
    public static string Words(Plan plan, LinkClass link, Solution solution, Check failing)
    {
        var (device, port, layout) = PlaceOf(plan, link, failing);
        var cure = Cure(plan, link, solution, failing) ?? "no port of it would do";
        return $"{Problem(failing)} at port {layout.Slots[port].Label} of {plan.Devices.Name(device)}; {cure}";
    }

    /// <summary>Which ports of the device would do, such as <c>ports 4, 8, 12 ... give 21 W</c>; null when none would.</summary>
    public static string? Cure(Plan plan, LinkClass link, Solution solution, Check failing)
    {
        var layout = PlaceOf(plan, link, failing).Layout;
        var suitable = Of(plan, link, solution, failing);
        return suitable.IsEmpty ? null : $"{Named(layout, suitable)} {Do(failing, layout, suitable)}";
    }

    /// <summary>Indexes of the cages of the device at which the end would work; empty when there is none.</summary>
    public static ImmutableArray<int> Of(Plan plan, LinkClass link, Solution solution, Check failing)
    {
        var layout = PlaceOf(plan, link, failing).Layout;
        var isFrom = failing.End == "from";
        var use = FinderContext.UseOf(
            isFrom ? link.From : link.To, isFrom ? link.Statement.From : link.Statement.To, link.Statement.Rate);
        return [.. Enumerable.Range(0, layout.Slots.Length).Where(cage => Suits(At(use, layout, cage), solution, failing))];
    }

    private static (int Device, int Cage, CageLayout Layout) PlaceOf(Plan plan, LinkClass link, Check failing)
    {
        var isFrom = failing.End == "from";
        var device = isFrom ? plan.Links.FromDevice(link.FirstLink) : plan.Links.ToDevice(link.FirstLink);
        var port = isFrom ? plan.Links.FromPort(link.FirstLink) : plan.Links.ToPort(link.FirstLink);
        return (device, port.Cage, plan.Devices.Group(device).Layout);
    }

    private static EndUse At(EndUse use, CageLayout layout, int cage) => use with
    {
        Cage = layout.Slots[cage].Cage,
        PowerLimit = layout.Slots[cage].Cage.LimitOf(layout.NumberInBank(cage)),
    };

    private static bool Suits(EndUse there, Solution solution, Check failing)
    {
        var (module, application) = failing.End == "from"
            ? (solution.FromModule, solution.FromApplication)
            : (solution.ToModule, solution.ToApplication);
        if (module is not null && application is not null)
            return Checks.Verdict(HostSideChecks.OfModule(there, module, application, failing.End)) != Verdict.Fail;
        // Of an assembly only the power of its end is compared: its ends go where its kind of cage is.
        return solution.Cable is AssemblyModel cable
            && (there.Cage.FormFactor.Accepts.Contains(cable.Near.Name) || there.Cage.FormFactor.Accepts.Contains(cable.Far.Name))
            && there.Cage.Modes.Contains(there.Mode)
            && failing.Name == CheckNames.ModulePower
            && (there.PowerLimit is not { } limit || failing.Value <= limit.Value);
    }

    private static string Problem(Check failing) => failing is { Value: { } value, Limit: { } limit }
        ? $"{Numerals.Shown(value, failing.Unit)} against {Numerals.Shown(limit, failing.Unit)}"
        : failing.Note;

    private static string Named(CageLayout layout, ImmutableArray<int> cages)
    {
        var labels = string.Join(", ", cages.Take(MostNamed).Select(c => layout.Slots[c].Label));
        return (cages.Length == 1 ? "port " : "ports ") + labels + (cages.Length > MostNamed ? " ..." : "");
    }

    private static string Do(Check failing, CageLayout layout, ImmutableArray<int> cages)
    {
        var isOne = cages.Length == 1;
        if (failing.Name != CheckNames.ModulePower) return isOne ? "does" : "do";
        var limits = cages.Select(c => layout.Slots[c].Cage.LimitOf(layout.NumberInBank(c))).OfType<Watts>().Distinct().ToList();
        if (limits.Count == 0) return isOne ? "states no limit" : "state no limit";
        return $"{(isOne ? "gives" : "give")} {(limits.Count > 1 ? "at least " : "")}{limits.Min()}";
    }
}
