using Lanewright.Model;
using Lanewright.Model.Binding;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Deliverables.Fabrics;

/// <summary>Writes a policy as a section of a plan.</summary>
internal static class PolicyText
{
    /// <summary>The keys with their values, those that say what holds anyway left out.</summary>
    public static IEnumerable<string> Lines(Policy policy, StandardsLibrary standards)
    {
        var usual = PolicyBinder.Default(standards);
        if (policy.ConnectionLoss.Value != usual.ConnectionLoss.Value)
            yield return "connection-loss: " + PlanText.Loss(policy.ConnectionLoss.Value);
        if (policy.ConnectionGrade.Length > 0) yield return "connection-grade: " + policy.ConnectionGrade;
        if (policy.SpliceLoss.Value != usual.SpliceLoss.Value) yield return "splice-loss: " + PlanText.Loss(policy.SpliceLoss.Value);
        if (policy.Reflectance is { } reflectance) yield return "reflectance: " + PlanText.Loss(reflectance.Value);
        if (policy.AgeingMargin != usual.AgeingMargin) yield return "ageing-margin: " + PlanText.Loss(policy.AgeingMargin);
        if (policy.LeastMargin != usual.LeastMargin) yield return "least-margin: " + PlanText.Loss(policy.LeastMargin);
        if (policy.ConnectionsInHall != usual.ConnectionsInHall)
            yield return "connections-in-hall: " + Numerals.Whole(policy.ConnectionsInHall);
        if (policy.ConnectionsBetweenHalls != usual.ConnectionsBetweenHalls)
            yield return "connections-between-halls: " + Numerals.Whole(policy.ConnectionsBetweenHalls);
        if (policy.Contingency != usual.Contingency) yield return "contingency: " + PlanText.Share(policy.Contingency);
        if (policy.Service != usual.Service) yield return "service: " + PlanText.Length(policy.Service);
        if (policy.InRack != usual.InRack) yield return "in-rack: " + PlanText.Length(policy.InRack);
        if (!policy.PreferredMedia.IsEmpty) yield return "prefer: " + PlanText.Names(policy.PreferredMedia);
        if (!policy.ForbiddenMedia.IsEmpty) yield return "forbid: " + PlanText.Names(policy.ForbiddenMedia);
        if (!policy.PreferredFormFactors.IsEmpty) yield return "prefer-form-factor: " + PlanText.Names(policy.PreferredFormFactors);
        var limits = policy.CopperLimits.Select(l => $"{{ rate: {l.Rate}, length: {PlanText.Length(l.Most)} }}").ToList();
        if (!policy.CopperLimits.Select(l => (l.Rate, l.Most)).SequenceEqual(usual.CopperLimits.Select(l => (l.Rate, l.Most))))
            yield return "copper-limits: [" + string.Join(", ", limits) + "]";
        if (policy.Spares != usual.Spares) yield return "spares: " + PlanText.Share(policy.Spares);
        if (policy.AllowsDrafts) yield return "drafts: yes";
        foreach (var line in Running(policy, usual)) yield return line;
    }

    /// <summary>What holds for spares, traffic, power and failures.</summary>
    private static IEnumerable<string> Running(Policy policy, Policy usual)
    {
        if (policy.SpareLevel is { } level)
            yield return $"spare-level: {{ confidence: {PlanText.Share(level.Confidence)}, resupply: {PlanText.Hours(level.Resupply)}, "
                + $"convention: {(level.Count == SpareCount.NeverShort ? "F" : "S")} }}";
        if (policy.Split != usual.Split) yield return "split: " + DemandLanguage.Splits.First(s => s.Split == policy.Split).Name;
        if (policy.MostUtilisation != usual.MostUtilisation) yield return "most-utilisation: " + PlanText.Share(policy.MostUtilisation);
        if (!policy.Oversubscription.IsEmpty)
            yield return "oversubscription: " + PlanText.Names([.. policy.Oversubscription.Select(r => r.ToString())]);
        if (policy.BreakerShare.Value != usual.BreakerShare.Value)
            yield return "breaker-share: " + PlanText.Share(Share.From(policy.BreakerShare.Value));
        if (policy.PowerFactor.Value != usual.PowerFactor.Value)
            yield return "power-factor: " + PlanText.Share(Share.From(policy.PowerFactor.Value));
        if (policy.SiteAvailability is { } site) yield return "site-availability: " + PlanText.Share(site);
        if (policy.Pue is { } pue) yield return "pue: " + Numerals.Exact(pue);
        if (policy.FailureRates.IsEmpty) yield break;
        yield return "failure-rates:";
        foreach (var rate in policy.FailureRates)
            yield return $"  - {{ of: {DemandLanguage.Parts.First(p => p.Part == rate.Part).Name}, "
                + (rate.Model.Length > 0 ? $"model: {PlanText.Name(rate.Model)}, " : "")
                + $"per-year: {PlanText.Number(rate.PerYear)}, repair: {PlanText.Hours(rate.Repair)}"
                + (rate.Source.Length > 0 ? $", source: {PlanText.Name(rate.Source)} }}" : " }");
    }
}
