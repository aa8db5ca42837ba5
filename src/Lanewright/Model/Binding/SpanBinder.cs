using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Lines;
using Lanewright.Model.Places;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Turns the section <c>spans</c> into spans.</summary>
internal sealed class SpanBinder(PlanTree tree, StandardsLibrary standards, Building building, FindingSink findings)
{
    private const double Shortest = 1;
    private const double Longest = 2e7;
    /// <summary>Decibels that a meter may be off on a short span.</summary>
    private const double Slight = 0.2;

    private const string UsualFibre = "G.652.D";

    /// <summary>The spans in natural order of their names.</summary>
    public ImmutableArray<FibreSpan> Bind()
    {
        var spans = ImmutableArray.CreateBuilder<FibreSpan>();
        foreach (var (name, map, nameSpan) in tree.Named("spans", "the span"))
            if (Bind(spans.Count, name, map, nameSpan) is { } span) spans.Add(span);
        return spans.ToImmutable();
    }

    /// <summary>A site by the name under a key; reported when there is none.</summary>
    public static Site? SiteOf(Building building, MapNode map, string key, FindingSink findings) => map.Text(key) is { } name
        ? Names.Require(building.Sites.FirstOrDefault(s => s.Name == name), "site", name, building.Sites.Select(s => s.Name),
            map.SpanOf(key), findings)
        : null;

    private FibreSpan? Bind(int index, string name, MapNode map, SourceSpan span)
    {
        if (SiteOf(building, map, "from", findings) is not { } from || SiteOf(building, map, "to", findings) is not { } to) return null;
        if (map.Length("length") is not { } length) return null;
        if (from == to) return Contradicts(map.SpanOf("to"), $"the span '{name}' ends where it begins; name the site it leads to");
        if (length.Metres is < Shortest or > Longest)
            return Contradicts(map.SpanOf("length"), $"the span '{name}' is {length} long; a span is between 1 m and 20000 km long");
        if (map.Decibels("measured-loss") is { Value: <= 0 })
            return Contradicts(map.SpanOf("measured-loss"), $"no fibre measures nothing; say what was measured on '{name}'");
        var floor = standards.LineValue("span", "loss-floor").Value;
        if (map.Decibels("measured-loss") is { } measured && measured.Value < floor * length.Kilometres - Slight)
            return Contradicts(map.SpanOf("measured-loss"),
                $"{measured} over {Numerals.Plain(length.Kilometres)} km is {Numerals.Plain(measured.Value / length.Kilometres)} dB/km, "
                + $"and no glass loses less than {Numerals.Plain(floor)} dB/km; say what was measured on '{name}'");
        if (map.InUnits("loss", UnitText.Attenuations) is { } least and > 0 && least < floor)
            return Contradicts(map.SpanOf("loss"),
                $"no glass loses less than {Numerals.Plain(floor)} dB/km, and '{name}' is said to lose {Numerals.Plain(least)} dB/km");
        var kind = map.Text("fibre") ?? UsualFibre;
        if (standards.LineFibre(kind) is not { } fibre) return null;
        return new FibreSpan
        {
            Index = index,
            Name = name,
            From = from,
            To = to,
            Length = length,
            Fibre = fibre,
            Attenuation = map.InUnits("loss", UnitText.Attenuations) is { } loss and > 0
                ? Attenuation.FromDecibelsPerKilometre(loss)
                : null,
            MeasuredLoss = map.Decibels("measured-loss"),
            Dispersion = map.InUnits("dispersion", UnitText.DispersionRates) is { } rate ? DispersionRate.From(rate) : null,
            Pmd = map.InUnits("pmd", UnitText.ModeDispersions),
            Connectors = map.Whole("connectors") ?? 0,
            ConnectorLoss = map.Decibels("connector-loss"),
            Splices = map.Whole("splices") ?? 0,
            SpliceLoss = map.Decibels("splice-loss"),
            Ageing = map.Decibels("ageing-margin") ?? default,
            RepairYears = map.Whole("repair-years") ?? 0,
            Ducts = [.. map.Texts("ducts").Select(t => t.Value).Distinct().Order(NaturalOrder.Instance)],
            HasHuts = map.Text("huts") == "anywhere",
            Cost = map.Real("cost") is { } cost and >= 0 ? cost : null,
            Pairs = map.Whole("pairs") ?? 1,
            Span = span,
        };
    }

    private FibreSpan? Contradicts(SourceSpan span, string message)
    {
        findings.Add(ModelFindings.LineContradicts, span, message);
        return null;
    }
}
