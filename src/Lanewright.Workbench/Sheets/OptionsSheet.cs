using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Fabrics;
using Lanewright.Deliverables.Report;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>What fabric to buy: the options side by side and what would change the answer.</summary>
internal static class OptionsSheet
{
    private const string Ask = "break-evens";

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (paper.Judged.Designed is not { } designed) return paper.Nothing("Options", "The plan cannot be read yet.");
        if (designed.Sizing.Value is not { } study)
            return paper.Nothing("Options", "The plan asks for no fabric. A section 'wanted' with hosts and their rate asks for one; "
                + "the page of the language describes it.");
        paper.Heading("Options", "Complete fabrics that fit the wishes, each priced from the geometry of the hall.");
        if (study.Answer.Options.IsEmpty)
        {
            new ReportSizing(paper.Markup, designed.Plan, study).Write();
            return true;
        }
        SideBySide(paper, designed.Plan, study);
        if (study.IsQuick || paper.Query == Ask) new BreakEvenSliders(paper, designed.Plan, study).Write();
        else AskForBreakEvens(paper);
        paper.Markup.Element("h2", "What they look like");
        paper.Figure(() => OptionSheet.Write(paper.Markup, designed.Plan, study, isFile: false));
        Bills(paper, designed.Plan, study);
        OptionYears.Write(paper, designed.Plan, study);
        OptionSums.Write(paper, designed.Plan, study);
        paper.Markup.Element("h2", "Why the others lost");
        foreach (var lost in study.Answer.Lost) paper.Markup.Element("p", $"{FabricShapes.Title(lost.Shape)}: {lost.Reason}.");
        foreach (var note in new[] { FabricWords.BoundHolds, FabricWords.EnergyCounted })
            paper.Markup.Element("p", char.ToUpperInvariant(note[0]) + note[1..] + ".", ("class", "soft small"));
        return true;
    }

    private static string Beside(Money amount, Money first) => Numerals.Grouped(amount.Units)
        + (amount.Units == first.Units ? "" : $" ({WhatIf.Signed(amount.Units - first.Units)})");

    /// <summary>What takes long is begun by the page itself, which shows how far it is; without a script it is asked for.</summary>
    private static void AskForBreakEvens(SheetPaper paper)
    {
        var address = paper.Site.To("options") + "?q=" + Ask;
        paper.Markup.Element("h2", "What would change the answer");
        paper.Markup.Open("div", ("class", "ahead"), ("data-ahead", address));
        paper.Markup.Open("p");
        paper.Markup.Text("To find out takes a while for a fabric of this size; this sheet and all others can be read meanwhile. ");
        paper.Markup.Inline("a", "Find out", ("href", address), ("class", "stay"));
        paper.Markup.Close();
        paper.Markup.Close();
    }

    /// <summary>What the price of each option is the sum of.</summary>
    private static void Bills(SheetPaper paper, Plan plan, FabricStudy study)
    {
        paper.Markup.Element("h2", "What each price is the sum of");
        foreach (var (option, i) in study.Answer.Options.Select((o, i) => (o, i)))
        {
            var title = $"{Numerals.Whole(i + 1)} {FabricShapes.Title(option.Shape)}";
            paper.Markup.Open("div", ("id", "bill-" + Numerals.Whole(i + 1)));
            var table = PaperTable.Open(paper.Markup, title, "part", "length", "#in use", "#to buy", "#each", "#" + plan.Currency);
            foreach (var part in (FabricPart[])[.. option.SwitchesByModel, .. option.ModulesByModel, .. option.CablesByModel,
                .. option.SmallParts])
                table.Row(part.Item.Name, part.Length?.ToString() ?? "", Numerals.Grouped(part.Count), Numerals.Grouped(part.ToBuy),
                    Numerals.Grouped(part.UnitPrice.Units, 2), Numerals.Grouped((part.UnitPrice * part.ToBuy).Units, 2));
            table.Row("sum", ["together", "", "", "", "", Numerals.Grouped(option.Price.Units, 2)]);
            table.Close();
            paper.Markup.Close();
        }
    }

    private static void SideBySide(SheetPaper paper, Plan plan, FabricStudy study)
    {
        var options = study.Answer.Options;
        string[] heads = ["", .. options.Select((o, i) => $"#{Numerals.Whole(i + 1)} {FabricShapes.Title(o.Shape)}")];
        paper.Markup.Open("div", ("id", "options"));
        var table = PaperTable.Open(paper.Markup, "side by side; what differs from the first is in brackets", heads);
        table.Row([$"{plan.Currency} to buy", .. options.Select((o, i) =>
            new Entry(Beside(o.Price, options[0].Price), "#bill-" + Numerals.Whole(i + 1)))]);
        Money($"{plan.Currency} over {Numerals.Whole(study.Wanted.Years)} years", o => o.PriceOverYears, OptionYears.Anchor);
        Money("of it switches and cards", o => o.CostOverYears.Switches, OptionYears.Anchor);
        Money("of it modules", o => o.CostOverYears.Modules, OptionYears.Anchor);
        Money("of it cables and small parts", o => o.CostOverYears.Cables + o.CostOverYears.SmallParts, OptionYears.Anchor);
        Money("of it energy", o => o.CostOverYears.Energy, OptionYears.Anchor);
        Money("no design alike costs less than", o => o.LowerBound, OptionSums.Gap);
        Linked("gap to that", o => o.Gap.ToString(), OptionSums.Gap);
        Linked("W, usual", o => Numerals.Grouped((decimal)o.Watts.Value), OptionSums.Watts);
        Linked("rack units", o => Numerals.Grouped(o.RackUnits), OptionSums.Units);
        Counted("modules", o => Numerals.Grouped(o.Modules));
        Counted("cables", o => Numerals.Grouped(o.Cables));
        Linked("room for hosts beyond the start", o => Numerals.Grouped(o.GrowthLeft), OptionSums.Room);
        Plain("switches", o => string.Join("; ", o.Switches.Select(FabricWords.Switches)));
        table.Close();
        paper.Markup.Close();
        return;

        void Counted(string name, Func<FabricOption, string> words) => Linked(name, words, i => "#bill-" + Numerals.Whole(i + 1));
        void Linked(string name, Func<FabricOption, string> words, Func<int, string> address) => table.Row(
            [name, .. options.Select((o, i) => new Entry(words(o), address(i)))]);
        void Plain(string name, Func<FabricOption, string> words) => table.Row([name, .. options.Select(o => (Entry)words(o))]);
        void Money(string name, Func<FabricOption, Money> amount, Func<int, string> address)
        {
            if (options.All(o => amount(o).Units == 0)) return;
            table.Row([name, .. options.Select((o, i) => new Entry(Beside(amount(o), amount(options[0])), address(i)))]);
        }
    }
}
