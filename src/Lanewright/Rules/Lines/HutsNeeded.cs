using Lanewright.Engineering.Lines;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Lines;

/// <summary>Amplifiers that have to stand along a span.</summary>
internal sealed class HutsNeeded() : LineRule("LW5135", nameof(HutsNeeded), Severity.Advice)
{
    /// <inheritdoc/>
    protected override void Judge(Judgement judgement, LineResult line)
    {
        foreach (var route in line.Routes)
        {
            var sites = new HashSet<double>();
            var here = default(Length);
            foreach (var span in route.Spans) sites.Add(Math.Round((here += span.Length).Kilometres, 3));
            var huts = route.Answer.Design.Stages.Where(s => s.What.StartsWith("in-line", StringComparison.Ordinal))
                .Select(s => Math.Round(s.At.Kilometres, 3)).Where(km => !sites.Contains(km)).ToList();
            if (huts.Count == 0) continue;
            var places = string.Join(", ", huts.Select(h => Numerals.Shown(h, "km")));
            Say(judgement, line, $"over {route.Name} amplifiers have to stand {places} from "
                + $"{route.Sites[0].Name}: find huts with power there, and describe them as sites");
        }
    }
}
