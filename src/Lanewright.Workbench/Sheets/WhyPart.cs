using Lanewright.Engineering.Cost;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>What a part is needed for, and how what is to be bought of it comes about.</summary>
internal static class WhyPart
{
    private const int MostRows = 400;

    /// <summary>Writes it.</summary>
    public static void Write(SheetPaper paper, DesignedPlan designed, string name)
    {
        var origins = PartsTally.OriginsOf(designed.Plan, designed.Design, designed.Lines, designed.Plant, name);
        var table = PaperTable.Open(paper.Markup, "what it is needed for", "by", "name", "length", "#needed", "#of them existing");
        foreach (var origin in origins.Take(MostRows))
            table.Row(Words(origin.Kind), new Entry(origin.Name, AddressOf(paper, designed, origin)), origin.Length?.ToString() ?? "",
                Numerals.Grouped(origin.Needed), origin.Existing > 0 ? Numerals.Grouped(origin.Existing) : "");
        table.Row("sum", ["together", "", "", Numerals.Grouped(origins.Sum(o => o.Needed)), ""]);
        table.Close();
        if (origins.Length > MostRows)
            paper.Markup.Element("p", $"{Numerals.Grouped(origins.Length - MostRows)} more are in the sum.", ("class", "soft"));
        foreach (var line in designed.Parts.Where(p => p.Item.Name == name)) Sum(paper, designed.Plan.Currency, line);
    }

    private static void Sum(SheetPaper paper, string currency, PartLine line)
    {
        var length = string.Join(", ", new[] { line.Length?.ToString() ?? "", line.Type.Length > 0 ? "type " + line.Type : "" }
            .Where(w => w.Length > 0)) is { Length: > 0 } words ? words + ": " : "";
        paper.Markup.Element("p", $"{length}{Numerals.Grouped(line.Needed)} needed - {Numerals.Grouped(line.Existing)} existing - "
            + $"{Numerals.Grouped(line.FromStock)} from stock + {Numerals.Grouped(line.Spares)} spare = "
            + $"{Numerals.Grouped(line.ToBuy)} to buy; x {Numerals.Grouped(line.UnitPrice.Units, 2)} = "
            + $"{Numerals.Grouped(line.Total.Units, 2)} {currency}. {Numerals.Grouped(line.Needed)} x "
            + $"{Numerals.Plain(Math.Round(line.UnitPower.Value, 3))} W = {Numerals.Grouped((decimal)line.Power.Value, 1)} W at most.");
    }

    private static string Words(PartOriginKind kind) => kind switch
    {
        PartOriginKind.Group => "devices of the group",
        PartOriginKind.Cages => "cages in use, one each",
        PartOriginKind.Links => "links of the set",
        PartOriginKind.Trunk => "trunks",
        _ => "the line",
    };

    private static string AddressOf(SheetPaper paper, DesignedPlan designed, PartOrigin origin) => origin.Kind switch
    {
        PartOriginKind.Group when FirstOf(designed, origin.Name) is { } device => paper.Site.To("devices", device),
        PartOriginKind.Links => paper.Site.Asking("links", origin.Name),
        PartOriginKind.Trunk => paper.Site.To("plant", origin.Name),
        PartOriginKind.Line => paper.Site.To("lines"),
        _ => "",
    };

    private static string? FirstOf(DesignedPlan designed, string group)
    {
        var devices = designed.Plan.Devices;
        return devices.Groups.FirstOrDefault(g => g.Name == group) is { Count: > 0 } found ? devices.Name(found.First) : null;
    }
}
