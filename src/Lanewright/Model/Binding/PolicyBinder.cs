using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Turns the policy section, or its absence, into a policy.</summary>
public static class PolicyBinder
{
    /// <summary>The policy of a plan that states none.</summary>
    public static Policy Default(StandardsLibrary standards) =>
        Bind(new MapNode(default, []), standards, new Catalogue([]), new FindingSink());

    /// <summary>The policy a section states, with the trade's habits where it is silent.</summary>
    public static Policy Bind(MapNode map, StandardsLibrary standards, Catalogue catalogue, FindingSink findings) => new()
    {
        ConnectionLoss = Stated(map.Decibels("connection-loss"), standards.Practice("loss", "connection")),
        ConnectionGrade = map.Text("connection-grade") ?? "",
        SpliceLoss = Stated(map.Decibels("splice-loss"), standards.Practice("loss", "splice")),
        Reflectance = map.Decibels("reflectance") is { } r ? new Known<Decibels>(r, Citation.OfPlan) : null,
        AgeingMargin = map.Decibels("ageing-margin") ?? default,
        LeastMargin = map.Decibels("least-margin") ?? default,
        ConnectionsInHall = map.Whole("connections-in-hall") ?? 0,
        ConnectionsBetweenHalls = map.Whole("connections-between-halls") ?? 2,
        Contingency = map.Share("contingency") ?? Share.FromPercent(standards.Practice("length", "contingency").Value),
        Service = map.Length("service") ?? Length.FromMetres(standards.Practice("length", "service").Value),
        InRack = map.Length("in-rack") ?? Length.FromMetres(standards.Practice("length", "in-rack").Value),
        PreferredMedia = [.. map.Texts("prefer").Select(t => t.Value)],
        ForbiddenMedia = [.. map.Texts("forbid").Select(t => t.Value)],
        PreferredFormFactors = FormFactors(map, standards, findings),
        CopperLimits = CopperLimits(map, standards),
        BendCategory = map.Text("bend-category") ?? "",
        Spares = map.Share("spares") ?? default,
        SpareLevel = SpareLanguage.Bind(map.Map("spare-level")),
        AllowsDrafts = map.Switch("drafts") ?? false,
        Split = DemandLanguage.Splits.FirstOrDefault(s => s.Name == map.Text("split")).Split,
        MostUtilisation = map.Share("most-utilisation") ?? Share.From(1),
        Oversubscription = WantedBinder.Ratios(map),
        SiteAvailability = map.Share("site-availability"),
        FibreCuts = map.Real("fibre-cuts") is { } cuts and >= 0
            ? new Known<double>(cuts, Citation.OfPlan)
            : standards.LineValue("cut", "per-1000-km-year"),
        FibreRepair = map.InUnits("fibre-repair", UnitText.Repairs) is { } repair
            ? new Known<Duration>(Duration.FromHours(repair), Citation.OfPlan)
            : standards.LineValue("cut", "repair").As(Duration.FromHours),
        FailureRates = FailureRateBinder.Bind(map["failure-rates"], catalogue, findings),
        BreakerShare = map.Share("breaker-share") is { } share
            ? new Known<double>(share.Value, Citation.OfPlan)
            : standards.Facility("breaker", "continuous-share"),
        PowerFactor = map.Share("power-factor") is { } factor
            ? new Known<double>(factor.Value, Citation.OfPlan)
            : standards.Facility("power", "factor"),
        Pue = map.Real("pue"),
    };

    private static Known<Decibels> Stated(Decibels? stated, Known<double> habit) =>
        stated is { } loss ? new Known<Decibels>(loss, Citation.OfPlan) : habit.As(Decibels.From);

    private static ImmutableArray<string> FormFactors(MapNode map, StandardsLibrary standards, FindingSink findings)
    {
        var names = ImmutableArray.CreateBuilder<string>();
        var known = standards.FormFactors.Select(f => f.Name).ToList();
        foreach (var text in map.Texts("prefer-form-factor"))
        {
            var named = standards.FormFactor(text.Value);
            if (Names.Require(named, "form factor", text.Value, known, text.Span, findings) is not null) names.Add(text.Value);
        }
        return names.ToImmutable();
    }

    private static ImmutableArray<CopperLimit> CopperLimits(MapNode map, StandardsLibrary standards)
    {
        var stated = map["copper-limits"] switch { ListNode list => list.Items.OfType<MapNode>(), MapNode one => [one], _ => [] };
        var limits = stated
            .Select(m => m.Rate("rate") is { } rate && m.Length("length") is { } length
                ? new CopperLimit(rate, length, Citation.OfPlan)
                : null)
            .OfType<CopperLimit>()
            .ToList();
        if (limits.Count == 0)
        {
            foreach (var gigabits in PracticedRates)
            {
                var most = standards.Practice($"copper-{gigabits}G", "length-max");
                limits.Add(new CopperLimit(BitRate.FromGigabits(gigabits), Length.FromMetres(most.Value), most.Source));
            }
        }
        return [.. limits.OrderBy(l => l.Rate)];
    }

    private static ImmutableArray<int> PracticedRates { get; } = [100, 400];
}
