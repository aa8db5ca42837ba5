using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Lines;
using Lanewright.Model.Links;

namespace Lanewright.Engineering.Lines;

/// <summary>Chooses the modules of a route: the cheapest that runs the type and goes with every cage of its end.</summary>
internal sealed class LineModules(Plan plan)
{
    private readonly ILookup<(int, int), LinePort> ports = plan.LinePorts.ToLookup(p => (p.Line, p.Route));

    /// <summary>The modules of a route that runs a type.</summary>
    public LineTerminals Of(LineStatement line, int route, string typeName)
    {
        if (typeName.Length == 0) return new LineTerminals(null, null, []);
        var here = ports[(line.Index, route)];
        var (from, ofFrom) = Side(line, line.FromEnd?.Module, typeName, here.Select(p => (p.FromDevice, p.FromPort)), "from");
        var (to, ofTo) = Side(line, line.ToEnd?.Module, typeName, here.Select(p => (p.ToDevice, p.ToPort)), "to");
        return new LineTerminals(from, to, [.. ofFrom, .. ofTo]);
    }

    private (ModuleModel? Module, ImmutableArray<Check> Checks) Side(
        LineStatement line, ModuleModel? named, string typeName, IEnumerable<(int Device, PortPlace Port)> at, string side)
    {
        var uses = Uses(line, at).ToList();
        var known = named is not null ? [named] : LineParts.Modules(plan.Catalogue, typeName).ToList();
        if (uses.Count == 0) return (known.FirstOrDefault(), []);
        if (known.Count == 0)
            return (null, [Check.Unknown(CheckNames.ModuleFit, $"no module of the catalogue runs {typeName}") with { End = side }]);
        var judged = known.Select(m => (Module: m, Checks: Checks(m, typeName, uses, side))).ToList();
        var best = judged.OrderBy(j => Links.Checks.Verdict(j.Checks)).ThenBy(j => j.Checks.Count(c => c.Verdict == Verdict.Fail)).First();
        return (best.Module, best.Checks);
    }

    /// <summary>One cage of each kind that the end has, with a name to tell it by.</summary>
    private IEnumerable<(EndUse Use, string Place)> Uses(LineStatement line, IEnumerable<(int Device, PortPlace Port)> at)
    {
        var kinds = at.Select(p =>
        {
            var group = plan.Devices.Group(p.Device);
            var slot = group.Layout.Slots[p.Port.Cage];
            return (p.Device, slot.Label, slot.Cage, Limit: slot.Cage.LimitOf(group.Layout.NumberInBank(p.Port.Cage)), p.Port.Ways);
        });
        foreach (var kind in kinds.GroupBy(k => (k.Cage, k.Limit, k.Ways)).Select(g => g.First()))
        {
            var use = new EndUse { Cage = kind.Cage, Mode = new PortMode(kind.Ways, line.Rate), PowerLimit = kind.Limit };
            yield return (use, $"{plan.Devices.Name(kind.Device)}:{kind.Label}");
        }
    }

    private static ImmutableArray<Check> Checks(
        ModuleModel module, string typeName, IEnumerable<(EndUse Use, string Place)> uses, string side)
    {
        if (module.Applications.FirstOrDefault(a => a.MediaName == typeName) is not { } application)
            return [Check.Of(CheckNames.ModuleFit, false, null, $"{module.Name} does not run {typeName}") with { End = side }];
        return
        [
            .. from use in uses
               let at = $"{module.Name} in {use.Place}"
               from check in HostSideChecks.OfModule(use.Use, module, application, side)
               select check with { Note = check.Note.Length > 0 ? $"{at}: {check.Note}" : at },
        ];
    }
}
