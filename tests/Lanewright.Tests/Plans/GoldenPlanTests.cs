using System.Text;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Json;
using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Load;
using Lanewright.Findings;
using Lanewright.Rules;

namespace Lanewright.Tests.Plans;

/// <summary>Whole plans and what came of them: the plan echoed with its findings under the line, and its tables.</summary>
public sealed class GoldenPlanTests
{
    public static TheoryData<string> Examples => new(Folders("examples"));

    public static TheoryData<string> SmallPlans => new(Folders("tests/plans"));

    [Theory]
    [MemberData(nameof(Examples))]
    public void Example_GivesWhatItGave(string name)
    {
        var judged = Compilation.Of(new FolderFiles(Repository.Path("examples", name)), "plan.yaml");
        Golden.Hold(name, "findings.txt", Echo(judged));
        Golden.Hold(name, "parts.csv", Csv(PartsView.Of(Expect.Designed(judged))));
        Golden.Hold(name, "links.csv", Csv(LinksView.Of(Expect.Designed(judged))));
    }

    [Theory]
    [MemberData(nameof(SmallPlans))]
    public void SmallPlan_GivesWhatItGave(string name)
    {
        var judged = Compilation.Of(new FolderFiles(Repository.Path("tests", "plans", name)), "plan.yaml");
        Golden.Hold(name, "findings.txt", Echo(judged));
        Golden.Hold(name, "parts.csv", Csv(PartsView.Of(Expect.Designed(judged))));
        Golden.Hold(name, "links.csv", Csv(LinksView.Of(Expect.Designed(judged))));
        Golden.Hold(name, "ports.csv", Csv(PortsView.Of(Expect.Designed(judged))));
        Golden.Hold(name, "cables.csv", Csv(CablesView.Of(Expect.Designed(judged))));
        if (judged.Plan is { Lines.IsEmpty: false })
        {
            Golden.Hold(name, "lines.csv", Csv(LinesView.Of(Expect.Designed(judged))));
            Golden.Hold(name, "spans.csv", Csv(SpansView.Of(Expect.Designed(judged))));
        }
        if (judged.Plan is { Demands.IsEmpty: false }) Golden.Hold(name, "load.json", Load(Expect.Designed(judged).Load));
    }

    [Fact]
    public void Demo_HasNoErrorAndEveryLinkPasses()
    {
        var judged = Compilation.Of(new FolderFiles(Repository.Path("examples", "kestrel-bay")), "plan.yaml");
        Assert.DoesNotContain(judged.Findings, f => f.Severity == Severity.Error);
        var summary = PlanSummary.Of(Expect.Designed(judged));
        Assert.Equal(summary.Links, summary.Passing);
        Assert.True(summary.Links > 1000);
    }

    [Fact]
    public void Draft_ShowsFifteenKindsOfMistakeInOneRun()
    {
        var judged = Compilation.Of(new FolderFiles(Repository.Path("examples", "kestrel-bay-mistakes")), "plan.yaml");
        Assert.True(judged.Findings.Where(f => f.Severity == Severity.Error).Select(f => f.Kind.Code).Distinct().Count() >= 15);
    }

    private static IEnumerable<string> Folders(string parent) =>
        Directory.EnumerateDirectories(Repository.Path(parent.Split('/'))).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal);

    /// <summary>The lines of each file that have findings, each with its findings under it.</summary>
    private static string Echo(JudgedPlan judged)
    {
        var text = new StringBuilder();
        foreach (var file in judged.Findings.GroupBy(f => f.Span.Path).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            text.Append("== ").Append(file.Key).Append('\n');
            foreach (var line in file.GroupBy(f => f.Span.Position.Line).OrderBy(g => g.Key))
            {
                text.Append(line.First().Span.Source?.Line(line.Key).ToString() ?? "").Append('\n');
                foreach (var finding in line)
                    text.Append(new string(' ', Math.Max(0, finding.Span.Position.Column - 1))).Append("^ ")
                        .Append(FindingsView.Word(finding.Severity)).Append(' ')
                        .Append(finding.Kind.Code).Append(' ').Append(finding.Kind.Name)
                        .Append(finding.Count > 1 ? $" x{finding.Count}" : "").Append(": ").Append(finding.Message).Append('\n');
            }
        }
        return text.ToString();
    }

    private static string Load(LoadStudy load)
    {
        using var stream = new MemoryStream();
        LoadJson.Write(new LoadAnswer(load.Demands, load.FabricOf(load.Demands[0]), Pairs: true, Seed: 1), stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static string Csv(TableView table)
    {
        using var stream = new MemoryStream();
        CsvWriter.Write(table, stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
