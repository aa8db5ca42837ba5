using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Space;
using Lanewright.Findings;
using Lanewright.Model.Devices;
using Lanewright.Quantities;

namespace Lanewright.Rules.Space;

/// <summary>Heavy devices that go in above the height at which they can be held.</summary>
internal sealed class HeavyMountedHigh() : Rule("LW4308", nameof(HeavyMountedHigh), Severity.Advice)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var standards = judgement.Plan.Standards;
        var alone = standards.Facility("lift", "one-person").As(Mass.FromKilograms);
        var highest = standards.Facility("lift", "highest").As(Length.FromMetres);
        var route = new RackRoute(judgement.Plan.Policy, standards);
        foreach (var group in judgement.Plan.Devices.Groups)
        {
            var weight = RackBook.WeightOf(group);
            if (!Rounding.IsAbove(weight.Kilograms, alone.Value.Kilograms)) continue;
            var high = Heights(judgement, group, route).Where(h => Rounding.IsAbove(h.Edge.Metres, highest.Value.Metres)).ToList();
            if (high.Count == 0) continue;
            var worst = high.MaxBy(h => h.Edge.Metres);
            judgement.Add(this, group.Span,
                $"{group.Model.Name} weighs {Numerals.Shown(weight.Kilograms, "kg")} and goes in "
                + $"{Numerals.Shown(Math.Round(worst.Edge.Metres, 2), "m")} above the floor in rack {worst.Rack}; above "
                + $"{Numerals.Shown(alone.Value.Kilograms, "kg")} two persons or a lift are needed anyway, and above "
                + $"{Numerals.Shown(highest.Value.Metres, "m")} a lift: place it lower, and the heaviest lowest. Local rules prevail",
                group.Name, high.Count, Kind.Severity,
                new Evidence("height", worst.Edge.Metres, highest.Value.Metres, "m", highest.Source));
        }
    }

    /// <summary>Height of the lower edge of each device that has a place.</summary>
    private static IEnumerable<(Length Edge, string Rack)> Heights(Judgement judgement, DeviceGroup devices, RackRoute route) =>
        from device in Enumerable.Range(devices.First, devices.Count)
        let unit = judgement.Plan.Devices.Unit(device)
        where unit > 0
        let rack = judgement.Plan.Devices.Rack(device)
        where rack is not null
        select (route.Height(rack.Type, unit, 0), rack.Name);
}
