using System.Collections.Immutable;
using System.Text.Json;
using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Workbench;

/// <summary>Names that may stand as a value at a place of the plan: what it describes elsewhere, and what the catalogue and the standards
/// hold. Words that do not depend on the plan come from the schema.</summary>
internal static class NamesThatFit
{
    private const int Most = 60;

    /// <summary>The places, key by key from the top of a file, with <c>*</c> for a name that the plan gives; lists do not count.</summary>
    public static ImmutableArray<(string Place, Func<Plan, IEnumerable<Offer>> Names)> Places { get; } =
    [
        ("devices/*/model", p => Items(p.Catalogue.Devices)),
        ("devices/*/cards", p => Items(p.Catalogue.Cards)),
        ("devices/*/racks", Rows),
        ("devices/*/feeds", Feeds),
        ("sites/*/halls/*/rows/*/rack", p => p.Building.Racks.Select(r => new Offer(r.Type.Name, "kind of rack"))),
        ("routes/from", Halls),
        ("routes/to", Halls),
        ("trunks/*/from", Panels),
        ("trunks/*/to", Panels),
        ("trunks/*/cable", p => Items(p.Catalogue.Cords.Where(c => c.Near.StartsWith("MPO", StringComparison.Ordinal)))),
        ("trunks/*/cassette", p => Items(p.Catalogue.Sundries.Where(s => s.Cassette is not null))),
        ("links/*/from", Ends),
        ("links/*/to", Ends),
        ("links/*/from/of", Ends),
        ("links/*/to/of", Ends),
        ("links/*/from/module", p => Items(p.Catalogue.Modules)),
        ("links/*/to/module", p => Items(p.Catalogue.Modules)),
        ("links/*/type", Types),
        ("links/*/assembly", p => Items(p.Catalogue.Assemblies)),
        ("links/*/cord", p => Items(p.Catalogue.Cords)),
        ("links/*/through", p => p.Trunks.Select(t => new Offer(t.Name, "trunk"))),
        ("links/*/network", Networks),
        ("power/*/racks", Rows),
        ("spans/*/from", Sites),
        ("spans/*/to", Sites),
        ("lines/*/from", Sites),
        ("lines/*/to", Sites),
        ("lines/*/type", p => p.Standards.WavelengthTypes.Select(t => new Offer(t.Name, "type of a wavelength"))),
        ("lines/*/over", Spans),
        ("lines/*/other-way", Spans),
        ("lines/*/from-ports/of", Ends),
        ("lines/*/to-ports/of", Ends),
        ("lines/*/from-ports/module", p => Items(p.Catalogue.Modules)),
        ("lines/*/to-ports/module", p => Items(p.Catalogue.Modules)),
        ("demands/*/from", Ends),
        ("demands/*/to", Ends),
        ("demands/*/among", Ends),
        ("demands/*/network", Networks),
        ("demands/*/with", p => p.Demands.Select(d => new Offer(d.Name, "demand"))),
        ("stock/model", p => Items(p.Catalogue.Items)),
        ("wanted/hosts/*/model", p => Items(p.Catalogue.Devices.Where(d => d.Kind == DeviceKind.Host))),
        ("wanted/hosts/*/cards", p => Items(p.Catalogue.Cards)),
        ("wanted/racks", Rows),
        ("wanted/spine-racks", Rows),
        ("wanted/reuse", p => Groups(p).Concat(p.Stock.Select(s => new Offer(s.Item.Name, "in stock")))),
    ];

    /// <summary>The names at a place that begin as a word does, then those that hold it elsewhere.</summary>
    public static IEnumerable<Offer> At(Plan plan, IReadOnlyList<string> place, string begun)
    {
        var found = Places.FirstOrDefault(p => Is(p.Place, place)).Names;
        return found is null ? [] : found(plan)
            .Where(o => o.Name.Contains(begun, StringComparison.OrdinalIgnoreCase))
            .DistinctBy(o => o.Name, StringComparer.Ordinal)
            .OrderBy(o => !o.Name.StartsWith(begun, StringComparison.OrdinalIgnoreCase))
            .Take(Most);
    }

    /// <summary>Writes names with what they are.</summary>
    public static void Write(Utf8JsonWriter json, IEnumerable<Offer> offers)
    {
        json.WriteStartArray();
        foreach (var offer in offers)
        {
            json.WriteStartObject();
            json.WriteString("name", offer.Name);
            json.WriteString("about", offer.About);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static bool Is(string known, IReadOnlyList<string> place)
    {
        var keys = known.Split('/');
        return keys.Length == place.Count && keys.Zip(place).All(k => k.First == "*" || k.First == k.Second);
    }

    private static IEnumerable<Offer> Items(IEnumerable<ICatalogueItem> items) => items.Select(i => new Offer(i.Name, i.Title));

    private static IEnumerable<Offer> Groups(Plan plan) => plan.Devices.Groups.Select(g =>
        new Offer(g.Name, g.Count == 1 ? g.Model.Name : $"{Numerals.Whole(g.Count)} x {g.Model.Name}"));

    /// <summary>Groups first: most links are written by group. Then devices that are not all of their group.</summary>
    private static IEnumerable<Offer> Ends(Plan plan) => Groups(plan).Concat(plan.Devices.Groups.Where(g => g.Count > 1)
        .SelectMany(g => Enumerable.Range(g.First, g.Count).Select(d => new Offer(plan.Devices.Name(d), "of " + g.Name))));

    private static IEnumerable<Offer> Panels(Plan plan) => plan.Devices.Groups.Where(g => g.Model.Kind == DeviceKind.Panel)
        .SelectMany(g => Enumerable.Range(g.First, g.Count).Select(d => new Offer(plan.Devices.Name(d), g.Model.Name)));

    private static IEnumerable<Offer> Rows(Plan plan) => plan.Building.Racks.GroupBy(r => (r.Hall, r.Row))
        .Select(row => new Offer($"{NameOf(plan, row.Key.Hall)}/{row.Key.Row}/{Run(row)}", $"{Numerals.Whole(row.Count())} racks"));

    private static string Run(IEnumerable<Rack> row)
    {
        var (first, last) = (row.Min(r => r.Number), row.Max(r => r.Number));
        return first == last ? Numerals.Whole(first) : $"{Numerals.Whole(first)}..{Numerals.Whole(last)}";
    }

    /// <summary>Two sites may each have a hall of one name; then the site tells which.</summary>
    private static string NameOf(Plan plan, Hall hall) =>
        plan.Building.Halls.Count(h => h.Name == hall.Name) > 1 ? hall.FullName : hall.Name;

    private static IEnumerable<Offer> Halls(Plan plan) => plan.Building.Halls.Select(h => new Offer(NameOf(plan, h), "hall of " + h.Site));

    private static IEnumerable<Offer> Feeds(Plan plan) => plan.Power.Select(f => new Offer(f.Name, "power feed"));

    private static IEnumerable<Offer> Sites(Plan plan) => plan.Building.Sites.Select(s => new Offer(s.Name, "site"))
        .Concat(plan.Spans.SelectMany(s => new[] { s.From.Name, s.To.Name }).Select(n => new Offer(n, "end of a span")));

    private static IEnumerable<Offer> Spans(Plan plan) => plan.Spans.Select(s => new Offer(s.Name, $"{s.From.Name} to {s.To.Name}"));

    private static IEnumerable<Offer> Networks(Plan plan) =>
        plan.Statements.Select(s => s.Network.Length == 0 ? "main" : s.Network).Distinct().Select(n => new Offer(n, "network"));

    private static IEnumerable<Offer> Types(Plan plan) => plan.Standards.InterfaceTypes.Select(t => new Offer(t.Name, "light"))
        .Concat(plan.Standards.CopperTypes.Select(t => new Offer(t.Name, "copper")));
}
