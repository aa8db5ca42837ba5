using System.Text.RegularExpressions;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Fabrics;
using Lanewright.Rules;

namespace Lanewright.Tests.Docs;

/// <summary>The tour shows what the program really prints and draws.</summary>
public sealed partial class ReadmeTests
{
    private const string LeftOut = "...";

    public static TheoryData<string> Commands => new(Blocks().Select(b => b.Command));

    [Fact]
    public void Tour_HasCommands() => Assert.True(Blocks().Count() >= 8);

    [Theory]
    [MemberData(nameof(Commands))]
    public void Output_IsWhatTheProgramPrints(string command)
    {
        var shown = Blocks().Single(b => b.Command == command).Lines;
        var folder = Directory.CreateTempSubdirectory("lanewright-").FullName;
        try
        {
            // What is built here must not land in the checkout.
            var run = Program.Run(command.Replace("--out out/kestrel-bay", "--out " + folder, StringComparison.Ordinal));
            var text = run.Output.Replace(folder, "out/kestrel-bay", StringComparison.Ordinal);
            var printed = text.Split('\n').Select(l => l.TrimEnd()).ToList();
            while (printed.Count > 0 && printed[^1].Length == 0) printed.RemoveAt(printed.Count - 1);
            Assert.True(Matches(shown, 0, printed, 0), $"{command} prints:\n{string.Join('\n', printed)}\n{run.Error}");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Theory]
    [InlineData("lane-ribbon.svg", "border-up", "ribbon")]
    [InlineData("loss-ladder.svg", "dome-up", "ladder")]
    public void Picture_IsWhatTheProgramDraws(string picture, string set, string drawing)
    {
        var judged = Compilation.Of(new FolderFiles(Repository.Path("examples", "kestrel-bay")), "plan.yaml");
        var choice = Expect.Designed(judged).Design.Choices.First(c => c.Class.Statement.Name == set);
        Hold(judged, picture, $"drawings/{Identifiers.Class(choice.Class.Index, 0)}-{drawing}.svg");
    }

    [Theory]
    [InlineData("fabric-load.svg", "reduce", "load")]
    [InlineData("failure-sweep.svg", "reduce", "failures")]
    public void PictureOfADemand_IsWhatTheProgramDraws(string picture, string demand, string drawing)
    {
        var judged = Compilation.Of(new FolderFiles(Repository.Path("examples", "kestrel-bay")), "plan.yaml");
        var index = judged.Plan!.Demands.Single(d => d.Name == demand).Index;
        Hold(judged, picture, $"drawings/{Identifiers.Demand(index)}-{drawing}.svg");
    }

    [Theory]
    [InlineData("rack-elevation.svg", "E05-front")]
    [InlineData("floor-plan.svg", "F04-floor")]
    [InlineData("tray-section.svg", "X01-section")]
    [InlineData("fibre-trace.svg", "T01-trace")]
    public void PictureOfAHall_IsWhatTheProgramDraws(string picture, string drawing) => Hold(
        Compilation.Of(new FolderFiles(Repository.Path("examples", "kestrel-bay")), "plan.yaml"), picture, $"drawings/{drawing}.svg");

    [Theory]
    [InlineData("line-power.svg", "W01b-power")]
    [InlineData("site-map.svg", "M01-map")]
    public void PictureOfALine_IsWhatTheProgramDraws(string picture, string drawing) => Hold(
        Compilation.Of(new FolderFiles(Repository.Path("examples", "kestrel-bay")), "plan.yaml"), picture, $"drawings/{drawing}.svg");

    private static void Hold(JudgedPlan judged, string picture, string name)
    {
        using var stream = new MemoryStream();
        Compilation.Deliver(judged).Single(d => d.Name == name).Write(stream);
        Hold(picture, stream.ToArray());
    }

    [Fact]
    public void OptionSheet_IsWhatTheProgramDraws()
    {
        var sized = Compilation.Size(new FolderFiles(Repository.Path("examples", "kestrel-bay")), "plan.yaml", null);
        var (plan, study) = Asked.Study(sized);
        using var stream = new MemoryStream();
        FabricDocuments.Drawings(plan, study, "", []).Single(d => d.Name == "option-sheet.svg").Write(stream);
        Hold("option-sheet.svg", stream.ToArray());
    }

    private static void Hold(string picture, byte[] drawn)
    {
        var path = Repository.Path("docs", "pictures", picture);
        if (Environment.GetEnvironmentVariable("LANEWRIGHT_REWRITE") == "1") File.WriteAllBytes(path, drawn);
        Assert.Equal(File.ReadAllBytes(path), drawn);
    }

    /// <summary>Whether lines are those printed, where three points stand for any lines.</summary>
    private static bool Matches(IReadOnlyList<string> shown, int at, List<string> printed, int from)
    {
        for (; at < shown.Count; at++, from++)
        {
            if (shown[at] == LeftOut && at == shown.Count - 1) return true;
            if (shown[at] == LeftOut)
                return Enumerable.Range(from, printed.Count - from + 1).Any(f => Matches(shown, at + 1, printed, f));
            if (from >= printed.Count || shown[at] != printed[from]) return false;
        }
        return from == printed.Count;
    }

    private static IEnumerable<(string Command, IReadOnlyList<string> Lines)> Blocks()
    {
        foreach (Match block in ConsoleBlock().Matches(File.ReadAllText(Repository.Path("README.md"))))
        {
            foreach (var run in block.Groups["text"].Value.Split("$ ./lanewright ", StringSplitOptions.RemoveEmptyEntries))
            {
                var lines = run.TrimEnd().Split('\n').Select(l => l.TrimEnd()).ToArray();
                yield return (lines[0], lines[1..]);
            }
        }
    }

    [GeneratedRegex("```console\n(?<text>.*?)```", RegexOptions.Singleline)]
    private static partial Regex ConsoleBlock();
}
