using Lanewright.Deliverables;
using Lanewright.Engineering.Plant;
using Lanewright.Quantities;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Workbench.Sheets;

/// <summary>The decibels of trunks: what a cabling test may show, and what the application with the least room leaves.</summary>
internal static class WhyTrunk
{
    /// <summary>The name of a trunk's derivation.</summary>
    public static string Name(string trunk) => "trunk/" + trunk;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper, DesignedPlan designed, string name)
    {
        if (designed.Plant.Value.Trunks.FirstOrDefault(t => t.Trunk.Name == name) is not { } state)
            return paper.Unknown("Trunk", $"There is no trunk '{name}'.");
        paper.Heading($"Decibels of trunk {name}", "What light loses from module to module through it, and what a test from panel to panel "
            + "may show.");
        paper.Markup.Open("p");
        paper.Way("the trunk on the sheet Plant", paper.Site.To("plant", name));
        paper.Markup.Close();
        if (Tightest(designed, state) is { } path) Channel(paper, state, path);
        else paper.Markup.Element("p", "No link through it has a limit of loss, so nothing is reckoned of a whole channel.");
        foreach (var test in state.Tests) Test(paper, designed, state, test);
        return true;
    }

    /// <summary>Of the links through it the one with the least room, as the table of trunks has it.</summary>
    private static CablePath? Tightest(DesignedPlan designed, TrunkState state) => state.Ways
        .Select(w => CablePath.Of(designed.Plan, designed.Design, designed.Plant.Value, w.FirstLink,
            Identifiers.Cable(designed.Design.CableOf(w.FirstLink))))
        .OfType<CablePath>().Where(p => p is { Allowed: not null, Loss: not null })
        .OrderBy(p => p.Allowed - p.Loss?.Value).FirstOrDefault();

    private static void Channel(SheetPaper paper, TrunkState state, CablePath path)
    {
        var own = path.Patches.ToList().FindIndex(p => p.Trunk.Index == state.Trunk.Index);
        var table = PaperTable.Open(paper.Markup,
            $"the channel with the least room, of type {path.TypeName}; what is of this trunk is marked", "element", "which",
            "where", "#dB", "of this trunk");
        foreach (var element in path.Elements.Where(e => e.Loss is not null))
            table.Row(element.Kind, element.Id, element.Position, Fixed(element.Loss?.Value), element.Leg == own ? "yes" : "");
        table.Row("sum", ["channel", "", "", Fixed(path.Loss?.Value), ""]);
        table.Close();
        var trunk = path.LossOf(own).Value;
        var steps = PaperTable.OpenNarrow(paper.Markup, "what that leaves for the trunk", "step", "#dB");
        steps.Row($"{path.TypeName} allows from module to module", Fixed(path.Allowed));
        steps.Row("less the channel", Fixed(-path.Loss?.Value));
        steps.Row("and the trunk's own part of it again", Fixed(trunk));
        steps.Row("sum", ["the trunk may show", Fixed(path.Allowed - path.Loss?.Value + trunk)]);
        steps.Close();
    }

    /// <summary>The limit of a test is that of its components: fibre by length, a value at each end, pairs between, splices.</summary>
    private static void Test(SheetPaper paper, DesignedPlan designed, TrunkState state, TestLimit test)
    {
        if (test.Limit is not { } limit)
        {
            paper.Markup.Element("p", $"The test by {test.Title} has no value for this kind of fibre.", ("class", "soft"));
            return;
        }
        var (standards, trunk) = (designed.Plan.Standards, state.Trunk);
        if (standards.Fibre(trunk.Cable.Fibre) is not { } fibre || state.Length is not { } length) return;
        var end = fibre.Kind == Standards.FibreKind.MultiMode ? "end-multi-mode" : "end-single-mode";
        var table = PaperTable.OpenNarrow(paper.Markup,
            $"what the test may show by {test.Title}, known as {Marks.Name(limit.Source.Mark)}", "part", "#how much",
            "#dB of one", "#dB");
        Part("fibre, by the kilometre", length.Kilometres, TestLimit.Cable(standards, test.Edition, fibre)?.Value);
        Part("pairs at the ends", 2, standards.Cabling("edition-" + test.Edition, end)?.Value);
        Part("pairs between", trunk.Connections - 2, standards.Cabling("pair", "loss")?.Value);
        Part("splices", trunk.Splices, standards.Cabling("splice", "loss")?.Value);
        table.Row("sum", ["together", "", "", Fixed(limit.Value)]);
        table.Close();

        void Part(string name, double count, double? each)
        {
            if (count > 0) table.Row(name, Numerals.Plain(count), Fixed(each), Fixed(count * each));
        }
    }

    private static string Fixed(double? value) => value is { } known ? Numerals.Fixed(known, 3) : "";
}
