using Lanewright.Engineering.Space;
using Lanewright.Findings;
using Lanewright.Rules.Space;

namespace Lanewright.Rules.Power;

/// <summary>Devices of one rack that breathe in different directions.</summary>
internal sealed class AirStreamsMixed() : Rule("LW4409", nameof(AirStreamsMixed), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Devices.Groups.Select(g => g.Model.Airflow).Distinct().Skip(1).FirstOrDefault() is null) return;
        foreach (var row in judgement.Racks.Value.Racks.GroupBy(r => (r.Rack.Hall, r.Rack.Row)))
        {
            var mixed = row.Where(r => Streams(judgement, r).Count > 1).ToList();
            if (mixed.Count == 0) continue;
            judgement.Add(this, RackPlaces.SpanOf(judgement, mixed[0]),
                $"in rack {mixed[0].Rack.Name} air goes {string.Join(" and ", Streams(judgement, mixed[0]))}: some of its devices "
                    + "breathe the warm "
                + "air of others; order them with one direction, or turn them round and lead cables through",
                mixed[0].Rack.Name, mixed.Count);
        }
    }

    private static List<string> Streams(Judgement judgement, RackContents contents)
    {
        var devices = judgement.Plan.Devices;
        return [.. contents.Devices.Select(d => devices.Group(d).Model.Airflow).Distinct().Order(StringComparer.Ordinal)];
    }
}
