using System.Collections.Immutable;
using Lanewright.Engineering.Fabrics;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Drawings.Fabrics;

/// <summary>Bars of one option on scales that all options share.</summary>
internal sealed class OptionBars
{
    /// <summary>Height of all bars with their words.</summary>
    public const double Height = 4 * RowHeight;

    private const double RowHeight = 46;
    private const double BarHeight = 13;
    private static readonly ImmutableArray<string> Shades = ["shade1", "shade2", "shade3", "shade4"];

    private readonly double width;
    private readonly int years;
    private readonly double mostMoney;
    private readonly double mostWatts;
    private readonly double mostUnits;

    /// <summary>Takes the options that share the scales.</summary>
    public OptionBars(ImmutableArray<FabricOption> options, int years, double width)
    {
        this.width = width;
        this.years = years;
        mostMoney = Math.Max(1, options.Max(o => (double)Math.Max(o.PriceOverYears.Units, o.Price.Units)));
        mostWatts = Math.Max(1, options.Max(o => o.Watts.Value));
        mostUnits = Math.Max(1, options.Max(o => o.RackUnits));
    }

    /// <summary>Draws the bars of an option with their upper left corner at a point.</summary>
    public void Draw(Canvas canvas, FabricOption option, double x, double y)
    {
        canvas.Begin("to-buy");
        Money(canvas, x, y, "to buy", option.Price, option.Cost);
        canvas.End();
        canvas.Begin("over-years");
        Money(canvas, x, y + RowHeight, $"over {Numerals.Whole(years)} years", option.PriceOverYears, option.CostOverYears);
        canvas.End();
        var bound = x + (width * (double)option.LowerBound.Units / mostMoney);
        canvas.Line(bound, y + RowHeight + 15, bound, y + RowHeight + 15 + BarHeight + 8, "act");
        canvas.Begin("power");
        var watts = Numerals.Grouped((decimal)option.Watts.Value) + " W";
        Plain(canvas, x, y + (2 * RowHeight), "power", watts, option.Watts.Value / mostWatts);
        canvas.End();
        canvas.Begin("rack-units");
        Plain(canvas, x, y + (3 * RowHeight), "rack units", Numerals.Grouped(option.RackUnits), option.RackUnits / mostUnits);
        canvas.End();
    }

    /// <summary>Says what the shades are, its base line at y.</summary>
    public static void Legend(Canvas canvas, double x, double y)
    {
        string[] words = ["switches and cards", "modules", "cables and small parts", "energy"];
        for (var i = 0; i < words.Length; i++)
        {
            canvas.Box(x, y - 9, 14, 10, Shades[i]);
            canvas.Text(x + 20, y, words[i], "small");
            x += 36 + TextFit.Width(words[i], 10.5);
        }
        canvas.Line(x + 6, y - 11, x + 6, y + 3, "act");
        canvas.Text(x + 14, y, "no design of the shape, placed alike, costs less over the years", "small");
    }

    private void Money(Canvas canvas, double x, double y, string what, Money amount, FabricCost cost)
    {
        Words(canvas, x, y, what, Numerals.Grouped(amount.Units));
        Money[] parts = [cost.Switches, cost.Modules, cost.Cables + cost.SmallParts, cost.Energy];
        var at = x;
        for (var i = 0; i < parts.Length; i++)
        {
            var length = width * (double)parts[i].Units / mostMoney;
            if (length <= 0) continue;
            canvas.Box(at, y + 18, length, BarHeight, Shades[i]);
            at += length;
        }
    }

    private void Plain(Canvas canvas, double x, double y, string what, string value, double share)
    {
        Words(canvas, x, y, what, value);
        canvas.Box(x, y + 18, width * share, BarHeight, Shades[0]);
    }

    private void Words(Canvas canvas, double x, double y, string what, string value)
    {
        canvas.Text(x, y + 11, what, "small soft");
        canvas.Text(x + width, y + 11, value, "small bold end");
    }
}
