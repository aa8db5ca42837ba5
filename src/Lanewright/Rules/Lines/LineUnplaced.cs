using Lanewright.Engineering.Lines;
using Lanewright.Findings;
using Lanewright.Model.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>A line between devices of the plan of which the plan does not say where its modules, or its other equipment, sit.</summary>
internal sealed class LineUnplaced() : LineRule("LW5137", nameof(LineUnplaced), Severity.Advice)
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        var statement = line.Statement;
        if (statement.FromEnd is null && HasDevices(judgement, statement.From.Name) && HasDevices(judgement, statement.To.Name))
            Say(judgement, line, "which ports its modules sit in is not said, so that neither cable schedule nor port map have them and no "
                + "cage is held against them; name them with 'from-ports' and 'to-ports'");
        var isMeasured = judgement.Lines.Value.Cords.All(c => c.Line != statement.Index || c.Ordered is not null);
        if (statement.FromEnd is null || isMeasured) return;
        Say(judgement, line, $"cords of it have no length, since the plan does not say {Missing(statement, line)} or no way leads "
            + "there; name them, with places in racks, so that cords can be measured and ordered");
    }

    private static bool HasDevices(Judgement judgement, string site)
    {
        var devices = judgement.Plan.Devices;
        return devices.Groups.Any(g => g.Count > 0 && devices.Rack(g.First)?.Hall.Site == site);
    }

    private static string Missing(LineStatement line, LineResult result)
    {
        var needsShelf = result.Routes.Any(r => r.Answer.Design.Multiplexes || !r.Answer.Design.Amplifiers.IsEmpty);
        var keys = new List<string>();
        if (needsShelf && line.FromShelves.IsEmpty) keys.Add("'from-shelf'");
        if (needsShelf && line.ToShelves.IsEmpty) keys.Add("'to-shelf'");
        if (line.FromPanels.IsEmpty) keys.Add("'from-panel'");
        if (line.ToPanels.IsEmpty) keys.Add("'to-panel'");
        return keys.Count > 0 ? string.Join(", ", keys) : "where all of its devices stand";
    }
}
