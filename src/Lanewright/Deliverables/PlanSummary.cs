using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>The headline numbers of a plan.</summary>
/// <param name="Devices">Devices.</param>
/// <param name="Links">Links, channels of lines among them.</param>
/// <param name="Classes">Classes of links.</param>
/// <param name="Cables">Cables to lay.</param>
/// <param name="Price">What buying costs.</param>
/// <param name="Unpriced">Kinds of parts to be bought that nobody states a price of: they are not in the price.</param>
/// <param name="Power">Most power of everything.</param>
/// <param name="Passing">Links that pass.</param>
/// <param name="Unproven">Links that cannot be proved.</param>
/// <param name="Failing">Links that fail.</param>
/// <param name="ExpectedExceedances">Links expected to exceed their loss limit by the statistics of their connectors;
/// null when no grade is stated.</param>
public sealed record PlanSummary(
    long Devices, long Links, int Classes, long Cables, Money Price, int Unpriced, Watts Power,
    long Passing, long Unproven, long Failing, double? ExpectedExceedances)
{
    /// <summary>What is missing from the price, in words behind it; empty when nothing is.</summary>
    public string Missing => Unpriced == 0 ? ""
        : Unpriced == 1 ? ", without 1 line of the parts list that has no price"
        : $", without {Numerals.Whole(Unpriced)} lines of the parts list that have no price";

    /// <summary>The summary of a plan.</summary>
    public static PlanSummary Of(DesignedPlan designed)
    {
        var plan = designed.Plan;
        var design = designed.Design;
        var byVerdict = new long[3];
        double? expected = null;
        foreach (var choice in design.Choices)
        {
            if (choice.Shares.IsEmpty) byVerdict[(int)Verdict.Fail] += choice.Class.Count;
            foreach (var share in choice.Shares)
            {
                byVerdict[(int)share.Solution.Verdict] += share.Links;
                if (LossExceedance.Of(plan.Policy, plan.Standards, share.Solution) is { } chance)
                    expected = (expected ?? 0) + (chance * share.Links);
            }
        }
        if (!plan.Trunks.IsEmpty)
        {
            // However well its class is made, a link for which no port is left is dark.
            foreach (var link in designed.Plant.Value.Portless)
            {
                if (design.SolutionOf(link) is not { Verdict: not Verdict.Fail } solution) continue;
                byVerdict[(int)solution.Verdict]--;
                byVerdict[(int)Verdict.Fail]++;
            }
        }
        var (links, cords) = (0L, 0);
        if (!plan.Lines.IsEmpty)
        {
            foreach (var line in designed.Lines.Value.Lines)
            {
                foreach (var route in line.Routes) byVerdict[(int)route.Verdict] += line.Statement.Channels;
                byVerdict[(int)Verdict.Fail] += (line.Statement.Routes - line.Routes.Length) * line.Statement.Channels;
                links += (long)line.Statement.Routes * line.Statement.Channels;
            }
            cords = designed.Lines.Value.Cords.Length;
        }
        var price = Money.Zero;
        var watts = 0.0;
        foreach (var part in designed.Parts)
        {
            price += part.Total;
            watts += part.Power.Value;
        }
        return new PlanSummary(
            plan.Devices.Count, plan.Links.Count + links, design.Choices.Length, design.Cables.Length + cords, price,
            designed.Parts.Count(p => p.IsMissingFromTotal), Watts.From(watts),
            byVerdict[0], byVerdict[1], byVerdict[2], expected);
    }
}
