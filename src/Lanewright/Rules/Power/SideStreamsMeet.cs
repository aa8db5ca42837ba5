using Lanewright.Engineering.Space;
using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Rules.Space;

namespace Lanewright.Rules.Power;

/// <summary>Racks side by side whose devices breathe from side to side: one takes what the other blows out.</summary>
internal sealed class SideStreamsMeet() : Rule("LW4417", nameof(SideStreamsMeet), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Devices.Groups.All(g => g.Model.Airflow != DeviceModel.SideToSide)) return;
        foreach (var row in judgement.Racks.Value.Racks.Where(r => Models(judgement, r).Any()).GroupBy(r => (r.Rack.Hall, r.Rack.Row)))
        {
            var racks = row.OrderBy(r => r.Rack.Number).ToList();
            var meeting = racks.Zip(racks.Skip(1)).Where(p => p.Second.Rack.Number == p.First.Rack.Number + 1).ToList();
            if (meeting.Count == 0) continue;
            var (one, next) = meeting[0];
            var isAlike = Models(judgement, one).Concat(Models(judgement, next)).Distinct().Count() == 1;
            judgement.Add(this, RackPlaces.SpanOf(judgement, one),
                $"devices in racks {one.Rack.Name} and {next.Rack.Name} side by side breathe from side to side"
                + (isAlike
                    ? ": mounted alike, one takes in what the other blows out"
                    : ", and whether their streams go one way is unproven: if they do, one takes in what the other blows out")
                + "; leave a rack between them, lead their air with baffles, or order devices that breathe from front to back",
                one.Rack.Name, meeting.Count);
        }
    }

    private static IEnumerable<DeviceModel> Models(Judgement judgement, RackContents contents) => contents.Devices
        .Select(d => judgement.Plan.Devices.Group(d).Model).Where(m => m.Airflow == DeviceModel.SideToSide).Distinct();
}
