using System.Collections.Immutable;
using Lanewright.Deliverables.Drawings;
using Lanewright.Deliverables.Drawings.Fabrics;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model;
using Lanewright.Model.Wanted;

namespace Lanewright.Deliverables.Fabrics;

/// <summary>The documents of an answer: the options in figures and pictures, and each as a plan.</summary>
public static class FabricDocuments
{
    /// <summary>The documents, each independent of the others.</summary>
    /// <param name="plan">The plan the question was asked in.</param>
    /// <param name="study">The answer.</param>
    /// <param name="refer">How a file of that plan is called from the folder of the documents.</param>
    /// <param name="withBreakEvens">Whether to find and draw what would change the answer, which takes many answers more.</param>
    public static ImmutableArray<Deliverable> Of(Plan plan, FabricStudy study, Func<string, string> refer, bool withBreakEvens) =>
    [
        .. Drawings(plan, study, "", withBreakEvens ? [.. Enum.GetValues<BreakEvenQuantity>()] : []),
        new Deliverable("options.json", stream => SizingJson.Write(study, plan.Currency, withBreakEvens, stream)),
        .. study.Answer.Options.Select(option => new Deliverable(
            $"option-{FabricShapes.Word(option.Shape)}.yaml", stream => OptionPlan.Write(plan, option, refer, stream))),
    ];

    /// <summary>The option sheet and a chart of each quantity that may turn out otherwise; none where nothing fits.</summary>
    /// <param name="plan">The plan the question was asked in.</param>
    /// <param name="study">The answer.</param>
    /// <param name="folder">Where they go, with its last stroke.</param>
    /// <param name="charts">The quantities that a chart is drawn of, which takes many answers more.</param>
    public static ImmutableArray<Deliverable> Drawings(
        Plan plan, FabricStudy study, string folder, ImmutableArray<BreakEvenQuantity> charts)
    {
        if (study.Answer.Options.IsEmpty) return [];
        var sheet = DrawingFile.Of($"{folder}{OptionSheet.Name}.svg", m => OptionSheet.Write(m, plan, study, isFile: true));
        return
        [
            sheet,
            .. charts.Select(quantity => DrawingFile.Of(
                $"{folder}{BreakEvenChart.Name(quantity)}.svg",
                m => BreakEvenChart.Write(m, plan, study.BreakEvenOf(quantity), isFile: true))),
        ];
    }
}
