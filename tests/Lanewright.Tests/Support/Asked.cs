using Lanewright.Engineering.Fabrics;
using Lanewright.Model;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Tests.Support;

/// <summary>Questions about fabrics, asked in tests.</summary>
internal static class Asked
{
    /// <summary>What became of a plan with a section <c>wanted</c>, written as a block; nothing beside it is asked.</summary>
    public static SizedPlan Plan(string block) =>
        Compilation.Size(PlanBlock.Files(block), "plan.yaml", null);

    /// <summary>A question by itself, without a plan.</summary>
    public static SizedPlan Question(string wanted) =>
        Compilation.Size(PlanBlock.Files(""), null, new SourceText("question", "lanewright: 1\nwanted: " + wanted + "\n"));

    /// <summary>The study of a question; the test fails when there is none.</summary>
    public static (Plan Plan, FabricStudy Study) Study(SizedPlan sized)
    {
        Assert.True(sized is { Plan: not null, Study: not null }, string.Join('\n', sized.Findings.Select(f => f.Message)));
        return (sized.Plan, sized.Study);
    }
}
