using System.Collections.Immutable;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>What the networks carry, whole and with as much broken as a person likes to try.</summary>
internal static class FabricSheet
{
    private const int MostFailures = 60;
    private const int MostBusiest = 12;

    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (paper.Judged.Designed is not { } designed) return paper.Nothing("Fabric", "The plan cannot be read yet.");
        var demands = designed.Load.Demands;
        if (demands.IsEmpty)
            return paper.Nothing("Fabric", "The plan states no demand, so there is no load to draw. A section 'demands' says which hosts "
                + "send to which; without it, 'lanewright load' asks what all hosts at line rate would do.");
        var choices = demands.Select(d => (Name: Identifiers.Demand(d.Demand.Index), d.Demand.Name)).ToList();
        var wanted = paper.Thing.Length > 0 ? paper.Thing
            : Identifiers.Demand(Tightest(demands).Demand.Index);
        if (demands.FirstOrDefault(d => Identifiers.Demand(d.Demand.Index) == wanted) is not { } study)
            return paper.Unknown("Fabric", $"There is no demand '{paper.Thing}'.");
        paper.Heading("Fabric");
        Tabs.Write(paper, "fabric", choices, wanted);
        if (!FailureDrawing.CanDraw(study))
        {
            paper.Figure(() => FabricDrawing.Write(paper.Markup, study, wanted, isFile: false));
            paper.Markup.Element("p", WhyNoFailures(study), ("class", "soft"));
            return true;
        }
        var failures = new FabricFailures(study, paper.Site.To("fabric", wanted), paper.Asked[FabricFailures.Key]);
        Tried(paper, study, failures);
        paper.Figure(() => FabricDrawing.Write(paper.Markup, study, wanted, isFile: false, failures.View));
        paper.Figure(() => FailureDrawing.Write(paper.Markup, study, wanted, isFile: false));
        Fullest(paper, study, failures.Down.Any() ? failures.View.Damage : null);
        Failures(paper, study, failures);
        return true;
    }

    private static string WhyNoFailures(DemandStudy study) => study.IsHose
        ? "This demand is any traffic the hosts may send; what fails is tried under a demand that says who sends to whom."
        : "Nothing can be tried to fail here: no traffic of this demand finds a way, or its ideal split is too large to solve.";

    /// <summary>The demand that a single failure brings nearest to its limit: the one to look at first.</summary>
    private static DemandStudy Tightest(ImmutableArray<DemandStudy> demands) => demands
        .Where(FailureDrawing.CanDraw)
        .MaxBy(d => (d.Sweep?.Classes.Max(d.After), -d.Demand.Index)) ?? demands[0];

    /// <summary>What is down, and what that does beside what was before. It stands as high with nothing down, so that the drawing below
    /// keeps its place while things are taken down.</summary>
    private static void Tried(SheetPaper paper, DemandStudy study, FabricFailures failures)
    {
        var markup = paper.Markup;
        markup.Open("section", ("class", "tried"), ("aria-label", "what is down"), ("aria-live", "polite"));
        markup.Open("p", ("class", "list"));
        if (failures.Down.Any())
        {
            markup.Text("Down: ");
            foreach (var name in failures.Down)
                markup.Inline("a", name + " ×", ("href", failures.With(name)), ("class", "stay tag"),
                    ("aria-label", $"bring {name} up again"));
            var whole = paper.Site.To("fabric", Identifiers.Demand(study.Demand.Index));
            markup.Inline("a", "all up again", ("href", whole), ("class", "stay"));
        }
        else
        {
            markup.Text("Take boxes and lines of the drawing down and see what the rest then carries. The address keeps what is down.");
        }
        markup.Close();
        Effect(paper, study, failures);
        foreach (var name in failures.Unknown)
            markup.Element("p", $"'{name}' is not in this network any more, so it is not counted.", ("class", "soft"));
        markup.Close();
    }

    private static void Effect(SheetPaper paper, DemandStudy study, FabricFailures failures)
    {
        var (markup, damage) = (paper.Markup, failures.View.Damage);
        var why = failures.Down.Any() ? paper.Site.To("why", WhyDown.Name(study)) + failures.Query : "#failures";
        var limit = study.Fabric.Policy.MostUtilisation.Value + LoadWords.Rounding;
        markup.Open("dl");
        Figure("fullest link between switches", LoadWords.Percent(study.Intact), LoadWords.Percent(damage?.MaxUtilisation ?? study.Intact),
            (damage?.MaxUtilisation ?? study.Intact).Value > limit, "#fullest");
        Figure("fullest host link", LoadWords.Percent(study.MaxAccessUtilisation),
            LoadWords.Percent(damage?.MaxAccessUtilisation ?? study.MaxAccessUtilisation),
            (damage?.MaxAccessUtilisation ?? study.MaxAccessUtilisation).Value > 1 + LoadWords.Rounding,
            "#fullest");
        Figure("hosts cut off", "0", Numerals.Grouped(damage?.HostsCut ?? 0), damage?.HostsCut > 0, why);
        Figure("hosts down", "0", Numerals.Grouped(damage?.HostsDown ?? 0), damage?.HostsDown > 0, why);
        var (before, lost) = (Gigabits(study.UnroutedGigabits), Gigabits(damage?.LostGigabits ?? study.UnroutedGigabits));
        Figure("traffic lost", before, lost, damage?.LostGigabits > LoadWords.Rounding, why);
        markup.Close();
        return;

        void Figure(string name, string works, string now, bool isAlert, string address)
        {
            markup.Open("div");
            markup.Element("dt", name);
            markup.Open("dd");
            markup.Open("a", ("href", address));
            markup.Inline("b", now, ("class", isAlert ? "alert" : ""));
            markup.Close();
            if (now != works) markup.Text($" {works} while all works");
            markup.Close();
            markup.Close();
        }
    }

    /// <summary>How full links come to be: what flows over them, held against what they carry.</summary>
    private static void Fullest(SheetPaper paper, DemandStudy study, DamagedNetwork? damage)
    {
        var busiest = damage?.Busiest(MostBusiest) ?? study.Busiest(MostBusiest);
        if (busiest.IsEmpty) return;
        paper.Markup.Open("div", ("id", "fullest"));
        var map = study.Fabric.Map;
        var table = PaperTable.Open(paper.Markup, "the fullest links: what flows over them and what they carry", "from", "to", "#parallel",
            "#Gb/s each", "#Gb/s together", "#Gb/s that flow", "#in use", "#alike");
        foreach (var busy in busiest)
        {
            var (each, parallel) = (busy.Rate.Gigabits, busy.Parallel);
            table.Row(NodeEntry.Of(paper, map, busy.From), NodeEntry.Of(paper, map, busy.To), Numerals.Whole(parallel),
                Numerals.Plain(each), Numerals.Plain(Math.Round(each * parallel, 1)), Numerals.Plain(Math.Round(busy.Gigabits, 1)),
                LoadWords.Percent(busy.Utilisation), Numerals.Grouped(busy.ClassSize));
        }
        table.Close();
        paper.Markup.Close();
    }

    private static string Gigabits(double value) => Numerals.Shown(Math.Round(value, 1), "Gb/s");

    private static void Failures(SheetPaper paper, DemandStudy study, FabricFailures failures)
    {
        var steps = FailureStep.Of(study);
        var limit = study.Fabric.Policy.MostUtilisation.Value + LoadWords.Rounding;
        paper.Markup.Open("div", ("id", "failures"));
        var table = PaperTable.Open(paper.Markup, "single failures, what costs most first", "what fails", "for example", "#alike",
            "#hosts cut off", "#traffic lost", "#fullest link then", "");
        foreach (var step in steps.Take(MostFailures))
        {
            var (sums, loads) = (Alone(paper, failures, step, "why", WhyDown.Name(study)),
                Alone(paper, failures, step, "fabric", Identifiers.Demand(study.Demand.Index)));
            table.Row(LoadWords.Failure(step.Kind), new Entry(step.Example, paper.Site.Asking("find", step.Example)),
                Numerals.Grouped(step.Size),
                step.HostsCut > 0 ? new Entry(Numerals.Grouped(step.HostsCut), sums, "alert") : "",
                step.LostGigabits > 0 ? new Entry(Numerals.Shown(step.LostGigabits, "Gb/s"), sums) : "",
                new Entry(LoadWords.Percent(step.Utilisation), loads + "#fullest",
                    step.Utilisation.Value > limit ? "alert" : ""),
                Take(step, failures));
        }
        table.Close();
        paper.Markup.Close();
        if (steps.Length > MostFailures)
            paper.Markup.Element("p", $"{Numerals.Grouped(steps.Length - MostFailures)} more steps do less; 'lanewright load --json' has "
                + "all.", ("class", "soft"));
    }

    /// <summary>A page with this failure alone.</summary>
    private static string Alone(SheetPaper paper, FabricFailures failures, FailureStep step, string sheet, string thing) =>
        $"{paper.Site.To(sheet, thing)}?{FabricFailures.Key}={Uri.EscapeDataString(failures.NameOf(step.Unit))}";

    private static Entry Take(FailureStep step, FabricFailures failures)
    {
        var name = failures.NameOf(step.Unit);
        return new Entry(failures.Down.Contains(name) ? "bring up" : "take down", failures.With(name), "stay");
    }
}
