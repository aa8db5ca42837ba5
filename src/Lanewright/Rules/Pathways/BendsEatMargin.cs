using Lanewright.Engineering.Links;
using Lanewright.Engineering.Pathways;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>Single-mode links whose bends along the pathways lose more light than they have to spare.</summary>
internal sealed class BendsEatMargin() : Rule("LW4115", nameof(BendsEatMargin), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var plan = judgement.Plan;
        if (plan.Policy.BendCategory.Length == 0) return;
        var worst = new SortedDictionary<int, (BendLoss Loss, double Margin, long Count)>();
        foreach (var loss in BendLoss.Of(plan, judgement.Design, judgement.Pathways.Value))
        {
            var check = judgement.Design.SolutionOf(loss.Link)?.Checks.FirstOrDefault(c => c.Name == CheckNames.ChannelLoss);
            if (check?.Margin is not { } margin || loss.Total is { } total && total.Value.Value <= margin) continue;
            var statement = plan.Links.Statement(loss.Link);
            var known = worst.GetValueOrDefault(statement);
            worst[statement] = (known.Loss ?? loss, known.Loss is null ? margin : known.Margin, known.Count + 1);
        }
        foreach (var (index, (loss, margin, count)) in worst) Add(judgement, index, loss, margin, count);
    }

    private void Add(Judgement judgement, int index, BendLoss loss, double margin, long count)
    {
        var plan = judgement.Plan;
        var ends = $"{plan.Devices.Name(plan.Links.FromDevice(loss.Link))} to {plan.Devices.Name(plan.Links.ToDevice(loss.Link))}";
        var where = $"{Numerals.Whole(loss.Quarters)} quarter turns of {Numerals.Shown(loss.Radius.Millimetres, "mm")}";
        var message = loss.Total is { } total
            ? $"{ends}: {where} may lose {Numerals.Shown(total.Value.Value, "dB")} in {plan.Policy.BendCategory}, and "
                + $"{Numerals.Shown(margin, "dB")} are left; take wider bends, or a fibre that bears them"
            : $"{ends}: nobody limits what {where} lose in {plan.Policy.BendCategory}, so the link is unproven; take wider bends, or a "
                + "fibre that bears them";
        var statement = plan.Statements[index];
        judgement.Add(this, statement.Span, message, statement.Name, count, Kind.Severity,
            new Evidence("bend loss", loss.Total?.Value.Value, margin, "dB", loss.Total?.Source));
    }
}
