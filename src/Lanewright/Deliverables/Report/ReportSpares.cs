using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Load;
using Lanewright.Engineering.Reliability;
using Lanewright.Model;
using Lanewright.Model.Demands;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Report;

/// <summary>The part of the report about spares and the power of racks: nothing where the policy states no failure rates.</summary>
internal static class ReportSpares
{
    private const int MostRows = 40;

    /// <summary>Writes it.</summary>
    public static void Write(MarkupWriter markup, DesignedPlan designed)
    {
        if (designed.Plan.Policy.SpareLevel is { } level) Spares(markup, designed, level);
        if (designed.Plan.Policy.FailureRates.FirstOrDefault(r => r.Part == FailingPart.Feed) is { } feed && !designed.Plan.Power.IsEmpty)
            Power(markup, designed, feed);
    }

    private static void Spares(MarkupWriter markup, DesignedPlan designed, SpareLevel level)
    {
        var needs = SpareBook.Of(designed.Plan, designed.Parts).ToList();
        markup.Element("h3", "Spares");
        markup.Element("p", $"Spares that last {Numerals.Shown(level.Resupply.Hours, "h")} until more arrive, with a probability of "
            + $"{level.Confidence}. Two conventions are in print and differ by one: S, a spare still lies on the shelf; F, no failure "
            + $"waits for a part. The parts list follows {SparesView.Letter(level.Count)}, or the share of spares that the "
            + "policy asks for where that is more. A part without a stated rate of failure is not reckoned for the level, and its cells "
            + "are empty. Failures are taken to come at a constant "
            + "rate and independently; early failures, and causes that take many at once such as firmware, dirt or a lost feed, are "
            + "outside it.",
            ("class", "soft"));
        if (needs.Count == 0) return;
        var table = HtmlTable.Open(markup, "part", "#length", "#in use", "#FIT of one", "#failures a year",
            "#until more arrive", "#S", "#F", "#by share", "#kept", "rate from");
        foreach (var need in needs.Take(MostRows))
        {
            string Level(Func<SpareLevelNeed, string> words) => need.ByLevel is { } level ? words(level) : "";
            table.Row(need.Item.Name, need.Length?.ToString() ?? "", Numerals.Grouped(need.InUse),
                Level(l => Numerals.Plain(Math.Round(l.Each.Fit, 1))), Level(l => Numerals.Fixed(l.Each.PerYear * need.InUse, 3)),
                Level(l => Numerals.Fixed(l.Expected, 4)), Level(l => Numerals.Whole(l.OneOnShelf)),
                Level(l => Numerals.Whole(l.NeverShort)), Numerals.Whole(need.ByShare), Numerals.Whole(need.Kept),
                Level(l => l.Source));
        }
        table.Close();
        if (needs.Count > MostRows)
            markup.Element("p", $"{Numerals.Grouped(needs.Count - MostRows)} more lines are in spares.csv.", ("class", "soft"));
    }

    /// <summary>A rack has power while one of its feeds is up.</summary>
    private static void Power(MarkupWriter markup, DesignedPlan designed, FailureRate rate)
    {
        markup.Element("h3", "Power of racks");
        markup.Element("p", "The share of time in which at least one feed of a rack is up, feeds failing independently: a common cause "
            + "before both lowers it.", ("class", "soft"));
        var each = Availability.OfUnit(rate.PerYear, TimeSpan.FromHours(rate.Repair.Hours));
        var table = HtmlTable.Open(markup, "#feeds", "#racks", "#one feed is up", "#at least one is up");
        var feeds = designed.Racks.Value.Racks.GroupBy(r => designed.Plan.Power.Count(f => f.Racks.Contains(r.Rack.Index)));
        foreach (var racks in feeds.Where(g => g.Key > 0).OrderBy(g => g.Key))
        {
            table.Row(Numerals.Whole(racks.Key), Numerals.Whole(racks.Count()), Percent(each),
                Percent(Availability.AtLeast(racks.Key, 1, each)));
        }
        table.Close();
    }

    private static string Percent(Share share) => Numerals.Fixed(share.Percent, 6) + " %";
}
