using Lanewright.Deliverables.Drawings.Fabric;
using Lanewright.Deliverables.Markup;
using Lanewright.Engineering.Load;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Deliverables.Report;

/// <summary>What the networks carry, whole and with something broken: a table of all demands, then the drawings of each, which
/// list its fullest links and its failures.</summary>
internal sealed class ReportLoad(MarkupWriter markup, DesignedPlan designed)
{
    /// <summary>The section's name on the page.</summary>
    public const string Anchor = "load";

    /// <summary>Writes it; nothing for a plan without demands.</summary>
    public void Write()
    {
        var studies = designed.Load.Demands;
        if (studies.IsEmpty) return;
        markup.Element("h2", "What the network carries", ("id", Anchor));
        var limit = LoadWords.Percent(designed.Plan.Policy.MostUtilisation);
        markup.Element("p", $"Traffic is split {LoadWords.Split(studies[0].Fabric.Rule)}, and {limit} of a link may be used. A host link "
            + "counts only where it is asked for more than it carries: a host that fills its own link is no fault of the network.",
            ("class", "soft"));
        var table = HtmlTable.Open(markup, "@section", "demand", "|kind", "what is sent", "#fullest link", "#fullest host link",
            "#without a path", "#fullest after one failure", "#single failures over the limit", "#most hosts cut off", "by");
        foreach (var study in studies) Row(table, study);
        table.Close();
        foreach (var fabric in designed.Load.Fabrics) Fabric(fabric);
        foreach (var study in studies) Section(study);
    }

    private static void Row(HtmlTable table, DemandStudy study)
    {
        var sweep = study.Sweep;
        var limit = study.Fabric.Policy.MostUtilisation.Value + LoadWords.Rounding;
        var classes = sweep?.Classes ?? [];
        table.Row(
            Identifiers.Demand(study.Demand.Index), study.Demand.Name, LoadWords.Kind(study), LoadWords.About(study),
            LoadWords.Percent(study.MaxUtilisation), LoadWords.Percent(study.MaxAccessUtilisation),
            study.UnroutedGigabits > 0 ? Numerals.Shown(study.UnroutedGigabits, "Gb/s") : "",
            classes.IsEmpty ? "" : LoadWords.Percent(classes.Max(study.After)),
            classes.IsEmpty ? "" : Numerals.Grouped(classes.Where(c => study.After(c).Value > limit).Sum(c => (long)c.Size)),
            classes.IsEmpty ? "" : Numerals.Grouped(study.Failures[0].HostsLost),
            classes.IsEmpty || study.Failures[0].HostsLost == 0 ? ""
                : LoadWords.Failure(study.Fabric.Failures[study.Failures[0].Units[0]]));
    }

    private void Fabric(NetworkStudy fabric)
    {
        markup.Open("ul");
        foreach (var tier in fabric.Oversubscription) markup.Element("li", LoadSentences.Oversubscription(fabric, tier));
        if (LoadSentences.Latency(fabric) is { } latency) markup.Element("li", latency);
        markup.Element("li", "bisection, throughput, the worst of all traffic and two failures at once: 'lanewright load'");
        markup.Close();
    }

    private void Section(DemandStudy study)
    {
        var id = Identifiers.Demand(study.Demand.Index);
        markup.Open("section", ("class", "way"), ("id", id));
        markup.Element("h3", $"{id}: {study.Demand.Name}");
        string?[] said = [LoadSentences.Ports(study), LoadSentences.Collisions(study), LoadSentences.Queue(study)];
        foreach (var sentence in said.OfType<string>()) markup.Element("p", sentence);
        markup.Open("figure", ("class", "ribbon"));
        FabricDrawing.Write(markup, study, id, isFile: false);
        markup.Close();
        if (FailureDrawing.CanDraw(study))
        {
            markup.Open("figure", ("class", "ladder"));
            FailureDrawing.Write(markup, study, id, isFile: false);
            markup.Close();
        }
        markup.Close();
    }
}
