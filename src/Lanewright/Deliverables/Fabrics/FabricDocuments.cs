using System.Collections.Immutable;
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
    public static ImmutableArray<Deliverable> Of(Plan plan, FabricStudy study, Func<string, string> refer) =>
    [
        new Deliverable("options.json", stream => SizingJson.Write(study, plan.Currency, stream)),
        .. study.Answer.Options.Select(option => new Deliverable(
            $"option-{FabricShapes.Word(option.Shape)}.yaml", stream => OptionPlan.Write(plan, option, refer, stream))),
    ];
}
