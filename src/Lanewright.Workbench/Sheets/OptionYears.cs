using Lanewright.Engineering.Fabrics;
using Lanewright.Model;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>What the price of each option over the years is the sum of: what is bought each year, and the energy until its end.</summary>
internal static class OptionYears
{
    /// <summary>Where the years of an option stand on the sheet.</summary>
    /// <param name="option">Which, from 0.</param>
    public static string Anchor(int option) => "#years-" + Numerals.Whole(option + 1);

    /// <summary>Writes them.</summary>
    public static void Write(SheetPaper paper, Plan plan, FabricStudy study)
    {
        paper.Markup.Element("h2", "What the years come to");
        foreach (var (option, i) in study.Answer.Options.Select((o, i) => (o, i))) One(paper, plan, study, option, i);
    }

    private static void One(SheetPaper paper, Plan plan, FabricStudy study, FabricOption option, int index)
    {
        var (cost, currency) = (option.CostOverYears, plan.Currency);
        paper.Markup.Open("div", ("id", Anchor(index)[1..]));
        var table = PaperTable.Open(paper.Markup,
            $"{Numerals.Whole(index + 1)} {FabricShapes.Title(option.Shape)}, year by year; energy with losses and cooling", "year",
            "#hosts", "#leaves", "#bought, " + currency, "#kWh", "#energy, " + currency);
        foreach (var year in option.Years)
            table.Row(Numerals.Whole(year.Year), Numerals.Grouped(year.Hosts), Numerals.Grouped(year.Leaves),
                Numerals.Grouped(year.Bought.Units, 2), Numerals.Grouped((decimal)year.Energy.KilowattHours),
                Numerals.Grouped(year.Energy.At(study.Wanted.EnergyPrice).Units, 2));
        table.Row("sum", ["together", "", "", Numerals.Grouped((cost.Total - cost.Energy).Units, 2),
            Numerals.Grouped((decimal)option.EnergyOverYears.KilowattHours), Numerals.Grouped(cost.Energy.Units, 2)]);
        table.Close();
        var kinds = PaperTable.OpenNarrow(paper.Markup, "the same by kind, over the years", "kind", "#" + currency);
        foreach (var (name, amount) in new[]
        {
            ("switches and cards", cost.Switches), ("modules", cost.Modules), ("cables", cost.Cables), ("small parts", cost.SmallParts),
            ("energy", cost.Energy),
        })
            kinds.Row(name, Numerals.Grouped(amount.Units, 2));
        kinds.Row("sum", ["together", Numerals.Grouped(option.PriceOverYears.Units, 2)]);
        kinds.Close();
        paper.Markup.Close();
    }
}
