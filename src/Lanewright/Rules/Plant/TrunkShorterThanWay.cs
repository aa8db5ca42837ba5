using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Plant;

/// <summary>Trunks whose stated length does not reach from panel to panel.</summary>
internal sealed class TrunkShorterThanWay() : Rule("LW4213", nameof(TrunkShorterThanWay))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var trunk in judgement.Plan.Trunks)
        {
            if (trunk.Length is not { } stated || judgement.Design.Trunks.Needed(trunk) is not { } needed) continue;
            if (!Rounding.IsBelow(stated.Metres, needed.Metres)) continue;
            // What lies there was measured, and the geometry may be drawn too long.
            judgement.Add(this, trunk.Span,
                $"'{trunk.Name}' is stated at {stated} and the way from panel to panel takes {needed} with its slack; correct the length, "
                + "or the places",
                trunk.Name, trunk.Count, trunk.IsExisting ? Severity.Warning : Kind.Severity);
        }
    }
}
