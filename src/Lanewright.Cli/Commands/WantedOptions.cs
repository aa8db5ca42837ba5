using System.Collections.Immutable;
using System.CommandLine;
using System.Text;
using System.Text.Json;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary>Flags that say what fabric is wanted. They become a text in the plan language, one line a flag, so that flags and plans
/// are read, bounded and judged by the same words.</summary>
internal sealed class WantedOptions
{
    /// <summary>Where the text says it comes from.</summary>
    public const string Source = "command line";

    private const string Host = "host";

    private readonly ImmutableArray<(string Key, Option Option)> keys =
    [
        ("count", new Option<string?>("--hosts") { Description = "how many hosts" }),
        ("rate", new Option<string?>("--host-rate") { Description = "rate of each port of a host, such as 200G" }),
        ("ports", new Option<string?>("--host-ports") { Description = "ports of each host; 1 when not said" }),
        ("per-rack", new Option<string?>("--per-rack") { Description = "hosts in a rack" }),
        ("model", new Option<string?>("--host-model") { Description = "device model of the hosts" }),
        ("cards", Several("--host-cards", "cards in a host, such as nic-2x200 or 'nic-1x400 x8'")),
        ("growth", new Option<string?>("--growth") { Description = "more hosts each year, such as 20%" }),
        ("years", new Option<string?>("--years") { Description = "years to look ahead" }),
        ("oversubscription", Several("--oversubscription",
            "most bandwidth below a switch against that above, such as 3:1; once a tier from the hosts up, as 3:1,1:1; the last holds on")),
        ("survive", new Option<string?>("--survive") { Description = "switches of a tier that may be out with the ratio kept" }),
        ("planes", new Option<string?>("--planes") { Description = "fabrics side by side" }),
        ("rails", new Option<string?>("--rails") { Description = "ports of a host that each go to a leaf of their own" }),
        ("form-factors", Several("--form-factor", "cages the switches may have")),
        ("uplink-rates", Several("--uplink-rate", "rates that links between switches may have")),
        ("tiers", new Option<string?>("--tiers") { Description = "most tiers of switches" }),
        ("shapes", Several("--shape", "shapes to choose from")),
        ("rack-units", new Option<string?>("--rack-units") { Description = "rack units for all switches together" }),
        ("rack-power", new Option<string?>("--rack-power") { Description = "most power of switches in one rack, such as 15kW" }),
        ("rack-weight", new Option<string?>("--rack-weight") { Description = "most weight of switches in one rack, such as 600kg" }),
        ("budget", new Option<string?>("--budget") { Description = "most to pay over the years, energy included" }),
        ("energy-price", new Option<string?>("--energy-price") { Description = "price of a kilowatt-hour" }),
        ("overhead", new Option<string?>("--overhead") { Description = "energy for cooling and conversion on top, such as 40%" }),
    ];

    private static readonly ImmutableArray<string> HostKeys = ["count", "rate", "ports", "per-rack", "model", "cards"];

    /// <summary>Catalogue files beside the plan's own.</summary>
    public Option<string[]> Catalogues { get; } = Several("--catalogue", "catalogue file, YAML or CSV, that extends or replaces items");

    /// <summary>All flags.</summary>
    public IEnumerable<Option> All => keys.Select(k => k.Option).Append(Catalogues);

    /// <summary>The values of a flag, in the order given.</summary>
    public ImmutableArray<string> Values(ParseResult parsed, string key) =>
        Given(parsed, keys.Single(k => k.Key == key).Option);

    /// <summary>Keys of the flags that were given.</summary>
    public IEnumerable<string> Stated(ParseResult parsed) => keys.Where(k => !Given(parsed, k.Option).IsEmpty).Select(k => k.Key);

    /// <summary>The flag of a key.</summary>
    public string NameOf(string key) => keys.Single(k => k.Key == key).Option.Name;

    /// <summary>The flag a line of the text comes from, for a message.</summary>
    public string FlagOf(ParseResult parsed, int line)
    {
        var lines = Lines(parsed).ToList();
        return line >= 1 && line <= lines.Count ? lines[line - 1].Flag : "";
    }

    /// <summary>What the flags say, in the plan language.</summary>
    public SourceText Text(ParseResult parsed)
    {
        var text = new StringBuilder();
        foreach (var (line, _) in Lines(parsed)) text.Append(line).Append('\n');
        return new SourceText(Source, text.ToString());
    }

    private IEnumerable<(string Line, string Flag)> Lines(ParseResult parsed)
    {
        yield return ("lanewright: 1", "");
        var catalogues = Given(parsed, Catalogues);
        if (!catalogues.IsEmpty) yield return ("catalogue: " + Written(catalogues), Catalogues.Name);
        var given = keys.Select(k => (k.Key, k.Option.Name, Values: Given(parsed, k.Option))).Where(k => !k.Values.IsEmpty).ToList();
        if (given.Count == 0) yield break;
        yield return ("wanted:", "");
        var ofHosts = given.Where(k => HostKeys.Contains(k.Key)).ToList();
        if (ofHosts.Count > 0)
        {
            yield return ("  hosts:", ofHosts[0].Name);
            yield return ($"    {Host}:", ofHosts[0].Name);
        }
        foreach (var (key, name, values) in ofHosts) yield return ($"      {key}: {Written(values)}", name);
        foreach (var (key, name, values) in given.Where(k => !HostKeys.Contains(k.Key))) yield return ($"  {key}: {Written(values)}", name);
    }

    /// <summary>Texts in double quotes, so that nothing in them reads as more than a value.</summary>
    private static string Written(ImmutableArray<string> values) =>
        values.Length == 1 ? Quoted(values[0]) : "[" + string.Join(", ", values.Select(Quoted)) + "]";

    private static string Quoted(string value) => JsonSerializer.Serialize(value);

    private static ImmutableArray<string> Given(ParseResult parsed, Option option) => option switch
    {
        Option<string?> one => parsed.GetValue(one) is { } value ? [value] : [],
        Option<string[]> several => [.. (parsed.GetValue(several) ?? []).SelectMany(v => v.Split(','))],
        _ => [],
    };

    private static Option<string[]> Several(string name, string description) =>
        new(name) { Description = description, AllowMultipleArgumentsPerToken = false };
}
