using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Demands;
using Lanewright.Notation;
using Lanewright.Quantities;

namespace Lanewright.Model.Binding;

/// <summary>Turns failure rates into typed ones: one for each kind of thing and one for each model of it, and a second one is
/// reported.</summary>
internal static class FailureRateBinder
{
    private static readonly ImmutableArray<string> RateKeys = ["per-year", "fit", "mtbf"];

    /// <summary>The rates that a policy states.</summary>
    public static ImmutableArray<FailureRate> Bind(Node? stated, Catalogue catalogue, FindingSink findings)
    {
        var rates = new SortedDictionary<(FailingPart Part, string Model), FailureRate>(Comparer<(FailingPart Part, string Model)>.Create(
            (a, b) => a.Part != b.Part ? a.Part.CompareTo(b.Part) : string.CompareOrdinal(a.Model, b.Model)));
        foreach (var rate in stated switch { ListNode list => list.Items.OfType<MapNode>(), MapNode one => [one], _ => [] })
        {
            if (rate.Text("of") is not { } of || rate.InUnits("repair", UnitText.Repairs) is not { } hours) continue;
            if (FailuresInYear(rate, of, findings) is not { } perYear) continue;
            var (part, model) = (DemandLanguage.Parts.First(p => p.Name == of).Part, rate.Text("model") ?? "");
            if (model.Length > 0 && !IsKnown(rate, part, of, model, catalogue, findings)) continue;
            var found = new FailureRate(part, perYear, Duration.FromHours(hours)) { Model = model, Source = rate.Text("source") ?? "" };
            if (!rates.TryAdd((part, model), found))
                findings.Add(NotationFindings.KeyRepeated, rate.Span,
                    $"the failure rate of '{(model.Length > 0 ? model : of)}' is stated twice; keep one of the two");
        }
        return [.. rates.Values];
    }

    /// <summary>Whether the catalogue has the model, as what is said to fail. One that is described and could not be made has been
    /// reported.</summary>
    private static bool IsKnown(MapNode rate, FailingPart part, string of, string model, Catalogue catalogue, FindingSink findings)
    {
        if (catalogue.IsFaulty(model)) return false;
        var known = ModelsOf(part, catalogue).Select(i => i.Name).ToList();
        return Names.Require(known.Find(n => n == model), of + " model", model, known, rate.SpanOf("model"), findings) is not null;
    }

    /// <summary>What fails as a part; nothing of things that have no model.</summary>
    private static IEnumerable<ICatalogueItem> ModelsOf(FailingPart part, Catalogue catalogue) => part switch
    {
        FailingPart.Switch => catalogue.Devices.Where(d => d.Kind is DeviceKind.Switch or DeviceKind.Chassis),
        FailingPart.Host => catalogue.Devices.Where(d => d.Kind == DeviceKind.Host),
        FailingPart.Panel => catalogue.Devices.Where(d => d.Kind == DeviceKind.Panel),
        FailingPart.Card => catalogue.Cards,
        FailingPart.Module => catalogue.Modules,
        FailingPart.Cable or FailingPart.Trunk => catalogue.Assemblies.Concat<ICatalogueItem>(catalogue.Cords),
        FailingPart.Cassette => catalogue.Sundries,
        _ => [],
    };

    /// <summary>A rate is stated once, in one of three ways.</summary>
    private static double? FailuresInYear(MapNode rate, string of, FindingSink findings)
    {
        double?[] stated =
        [
            rate.Real("per-year"),
            rate.Real("fit") is { } fit ? FailureIntensity.FromFit(fit).PerYear : null,
            rate.InUnits("mtbf", UnitText.Repairs) is { } hours
                ? FailureIntensity.FromMeanTimeBetween(Duration.FromHours(hours)).PerYear
                : null,
        ];
        if (stated.Count(s => s is not null) == 1) return stated.First(s => s is not null);
        var named = RateKeys.Count(k => rate[k] is not null);
        if (named == 0)
            findings.Add(NotationFindings.KeyMissing, rate.Span, $"how often '{of}' fails is not said; write per-year, fit or mtbf");
        else if (named > 1)
            findings.Add(NotationFindings.KeyRepeated, rate.Span, $"how often '{of}' fails is said in {named} ways; keep one of them");
        return null;
    }
}
