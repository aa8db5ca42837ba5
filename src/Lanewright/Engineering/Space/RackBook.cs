using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Power;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Space;

/// <summary>What stands in the racks of a plan.</summary>
public sealed class RackBook
{
    private readonly double[] modules;
    private readonly ImmutableArray<(double Typical, RackLoad Most)> groups;

    private RackBook(Plan plan, LinkDesign design, Lazy<LineBook> lines)
    {
        var power = ModulePower.Of(plan, design, lines);
        modules = [.. Enumerable.Range(0, plan.Devices.Count).Select(d => power.Of(d).Value)];
        Plan = plan;
        groups =
        [
            .. plan.Devices.Groups.Select(g => (g.Model.Typical.Value + g.Cards.Sum(c => c.Typical.Value), RackLoad.Of(g.Model, g.Cards))),
        ];
        var inRack = new List<int>[plan.Building.Racks.Length];
        for (var device = 0; device < plan.Devices.Count; device++)
            if (plan.Devices.RackIndex(device) is >= 0 and var rack) (inRack[rack] ??= []).Add(device);
        All =
        [
            .. from rack in plan.Building.Racks
               let devices = inRack[rack.Index] ?? []
               select Contents(rack, [.. devices.OrderBy(plan.Devices.Unit).ThenBy(d => d)]),
        ];
        Racks = [.. All.Where(r => !r.Devices.IsEmpty)];
    }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>All racks of the plan in order, empty ones as well.</summary>
    public ImmutableArray<RackContents> All { get; }

    /// <summary>The racks that hold a device, in order.</summary>
    public ImmutableArray<RackContents> Racks { get; }

    /// <summary>The racks of a design.</summary>
    public static RackBook Of(Plan plan, LinkDesign design, Lazy<LineBook> lines) => new(plan, design, lines);

    /// <summary>Most power of a device with its cards and modules.</summary>
    public Watts MaximumOf(int device) => Watts.From(groups[Plan.Devices.Group(device).Index].Most.Watts + modules[device]);

    /// <summary>Power of a device under a usual load, modules at their most.</summary>
    public Watts TypicalOf(int device) => Watts.From(groups[Plan.Devices.Group(device).Index].Typical + modules[device]);

    /// <summary>Weight of a device of a group with its cards.</summary>
    public static Mass WeightOf(DeviceGroup group) =>
        Mass.FromKilograms(RackLoad.Of(group.Model, group.Cards).Kilograms);

    /// <summary>Whether the catalogue says what devices of a group weigh.</summary>
    public static bool IsWeightKnown(DeviceGroup group) => group.Model.Weight.Kilograms > 0;

    /// <summary>Whether the catalogue says what devices of a group draw at the most; a panel draws nothing.</summary>
    public static bool IsPowerKnown(DeviceGroup group) => group.Model.Kind == DeviceKind.Panel || group.Model.Maximum.Value > 0;

    private RackContents Contents(Rack rack, ImmutableArray<int> devices) => new(
        rack,
        devices,
        devices.Sum(d => Plan.Devices.Group(d).Model.Units),
        Mass.FromKilograms(devices.Sum(d => groups[Plan.Devices.Group(d).Index].Most.Kilograms)),
        Watts.From(devices.Sum(d => TypicalOf(d).Value)),
        Watts.From(devices.Sum(d => MaximumOf(d).Value)))
    {
        IsWeightKnown = devices.All(d => IsWeightKnown(Plan.Devices.Group(d))),
        IsPowerKnown = devices.All(d => IsPowerKnown(Plan.Devices.Group(d))),
    };
}
