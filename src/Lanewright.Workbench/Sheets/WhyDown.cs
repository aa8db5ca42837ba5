using System.Collections.Immutable;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>What is lost with something down: which hosts are cut off and why, and which traffic is lost.</summary>
internal static class WhyDown
{
    private const int MostRows = 60;

    /// <summary>The name of its derivation.</summary>
    public static string Name(DemandStudy study) => $"down/{Identifiers.Demand(study.Demand.Index)}";

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper, DesignedPlan designed, string thing)
    {
        const string title = "What is lost";
        if (designed.Load.Demands.FirstOrDefault(d => Identifiers.Demand(d.Demand.Index) == thing) is not { } study)
            return paper.Unknown(title, $"There is no demand '{thing}'.");
        var failures = new FabricFailures(study, paper.Site.To("fabric", thing), paper.Asked[FabricFailures.Key]);
        var down = failures.Down.ToImmutableArray();
        if (down.IsEmpty || failures.Causes is not { } causes || failures.View.Damage is not { } damage)
            return paper.Nothing(title, "Nothing is down, so nothing is lost by it.");
        paper.Heading(title, $"demand {study.Demand.Name}, with {string.Join(", ", down)} down");
        paper.Markup.Open("p");
        paper.Markup.Inline("a", "back to the drawing", ("href", failures.Here));
        paper.Markup.Close();
        Traffic(paper, study, causes, damage);
        Hosts(paper, study, causes, damage);
        Flows(paper, study, causes);
        return true;
    }

    private static void Traffic(SheetPaper paper, DemandStudy study, DamageCauses causes, DamagedNetwork damage)
    {
        var table = PaperTable.OpenNarrow(paper.Markup, "traffic lost", "", "#Gb/s");
        table.Row("sent while all works", Rounded(causes.SentWhole));
        if (study.UnroutedGigabits > LoadWords.Rounding) table.Row("of it without a way even then", Rounded(study.UnroutedGigabits));
        table.Row("not sent: by or to hosts that are down, or more than the links left of a host carry", Rounded(causes.UnsentGigabits));
        table.Row("sent, and without a way", Rounded(causes.Stranded.Sum(f => f.Gigabits)));
        table.Row("sum", ["lost", Rounded(damage.LostGigabits)]);
        table.Close();
    }

    private static void Hosts(SheetPaper paper, DemandStudy study, DamageCauses causes, DamagedNetwork damage)
    {
        if (causes.CutOff.IsEmpty) return;
        var table = PaperTable.Open(paper.Markup, "hosts that are up and cut off from the largest part of what they reached before",
            "hosts", "#cut off", "#their links to what is up", "why");
        foreach (var cut in causes.CutOff.Take(MostRows))
            table.Row(NodeEntry.Of(paper, study.Fabric.Map, cut.Node), Numerals.Grouped(cut.Hosts), Numerals.Grouped(cut.LinksLeft),
                cut.LinksLeft == 0 ? "every link of theirs leads to what is down" : "what their links lead to is parted from the rest");
        table.Row("sum", ["together", Numerals.Grouped(damage.HostsCut), "", ""]);
        table.Close();
        More(paper, causes.CutOff.Length, "bundles of hosts");
    }

    private static void Flows(SheetPaper paper, DemandStudy study, DamageCauses causes)
    {
        if (causes.Stranded.IsEmpty) return;
        var table = PaperTable.Open(paper.Markup, "traffic that is sent and finds no way", "from", "to", "#Gb/s");
        foreach (var flow in causes.Stranded.Take(MostRows))
            table.Row(NodeEntry.Of(paper, study.Fabric.Map, flow.From), NodeEntry.Of(paper, study.Fabric.Map, flow.To),
                Rounded(flow.Gigabits));
        table.Close();
        More(paper, causes.Stranded.Length, "pairs");
    }

    private static void More(SheetPaper paper, int count, string what)
    {
        if (count > MostRows)
            paper.Markup.Element("p", $"{Numerals.Grouped(count - MostRows)} more {what}; the sums count them.", ("class", "soft"));
    }

    private static string Rounded(double gigabits) => Numerals.Plain(Math.Round(gigabits, 1));
}
