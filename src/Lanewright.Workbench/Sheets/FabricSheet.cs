using System.Collections.Immutable;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>What the networks carry, whole and with something broken.</summary>
internal static class FabricSheet
{
    private const int MostFailures = 60;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (paper.Judged.Designed is not { } designed) return paper.Nothing("Fabric", "The plan cannot be read yet.");
        var demands = designed.Load.Demands;
        if (demands.IsEmpty)
            return paper.Nothing("Fabric", "The plan states no demand, so there is no load to draw. A section 'demands' says which hosts "
                + "send to which; without it, 'lanewright load' asks what all hosts at line rate would do.");
        var choices = demands.Select(d => (Name: Identifiers.Demand(d.Demand.Index), d.Demand.Name)).ToList();
        var wanted = paper.Thing.Length > 0 ? paper.Thing
            : Identifiers.Demand(Tightest(demands).Demand.Index);
        if (demands.FirstOrDefault(d => Identifiers.Demand(d.Demand.Index) == wanted) is not { } study)
            return paper.Unknown("Fabric", $"There is no demand '{paper.Thing}'.");
        paper.Heading("Fabric");
        Tabs.Write(paper, "fabric", choices, wanted);
        paper.Figure(() => FabricDrawing.Write(paper.Markup, study, wanted, isFile: false));
        if (!FailureDrawing.CanDraw(study)) return true;
        paper.Figure(() => FailureDrawing.Write(paper.Markup, study, wanted, isFile: false));
        Failures(paper, study);
        return true;
    }

    /// <summary>The demand that a single failure brings nearest to its limit: the one to look at first.</summary>
    private static DemandStudy Tightest(ImmutableArray<DemandStudy> demands) => demands
        .Where(FailureDrawing.CanDraw)
        .MaxBy(d => (d.Sweep?.Classes.Max(d.After), -d.Demand.Index)) ?? demands[0];

    private static void Failures(SheetPaper paper, DemandStudy study)
    {
        var steps = FailureStep.Of(study);
        var limit = study.Fabric.Policy.MostUtilisation.Value + LoadWords.Rounding;
        var table = PaperTable.Open(paper.Markup, "single failures, the worst first", "what fails", "for example", "#alike",
            "#fullest link then", "#hosts cut off");
        foreach (var step in steps.Take(MostFailures))
            table.Row(LoadWords.Failure(step.Kind), new Entry(step.Example, paper.Site.Asking("find", step.Example)),
                Numerals.Grouped(step.Size),
                new Entry(LoadWords.Percent(step.Utilisation), "", step.Utilisation.Value > limit ? "alert" : ""),
                new Entry(step.HostsCut > 0 ? Numerals.Grouped(step.HostsCut) : "", "", step.HostsCut > 0 ? "alert" : ""));
        table.Close();
    }
}
