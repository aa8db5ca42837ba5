using Lanewright.Model.Wanted;

namespace Lanewright.Rules.Fabric;

/// <summary>A fabric is wanted that no shape can be.</summary>
internal sealed class WishesUnmet() : Rule("LW3113", nameof(WishesUnmet))
{
    /// <inheritdoc/>
    public override bool NeedsWholePlan => true;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Wanted is not { } wanted) return;
        if (judgement.Glance.Value is not { } lost) return;
        var reasons = lost.GroupBy(l => l.Reason).Select(g => $"{string.Join(", ", g.Select(l => FabricShapes.Word(l.Shape)))}: {g.Key}");
        judgement.Add(this, wanted.Span,
            $"no fabric keeps all that is wanted ({string.Join("; ", reasons)}); 'lanewright size' tells which wishes cannot be had "
            + "together and how far each has to give way",
            "wanted");
    }
}
