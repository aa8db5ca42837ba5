using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Lines;

/// <summary>What a line is built of: modules, multiplexers, amplifiers and pads. What the catalogue does not have stands in the list
/// without a price.</summary>
public static class LineParts
{
    /// <summary>The parts of a design with so many channels, with their numbers.</summary>
    /// <param name="catalogue">What can be bought.</param>
    /// <param name="design">The design.</param>
    /// <param name="channels">Its channels.</param>
    /// <param name="terminals">The modules that are chosen; null for the cheapest of the type.</param>
    public static ImmutableArray<(ICatalogueItem Part, int Count)> Of(
        Catalogue catalogue, LineDesign design, int channels, LineTerminals? terminals = null)
    {
        if (design.TypeName.Length == 0) return [];
        var parts = ImmutableArray.CreateBuilder<(ICatalogueItem, int)>();
        var cheapest = Modules(catalogue, design.TypeName).FirstOrDefault()
            ?? (ICatalogueItem)Missing(LineRole.None, $"{design.TypeName} module");
        var (from, to) = (terminals?.From ?? cheapest, terminals?.To ?? cheapest);
        if (from.Name == to.Name) parts.Add((from, 2 * channels));
        else parts.AddRange((from, channels), (to, channels));
        if (design.Scheme == LineScheme.Grey) return parts.ToImmutable();
        if (design.Multiplexes) parts.Add((Multiplexer(catalogue, design.Scheme, channels), 2));
        // Both directions of a pair are amplified, each by an amplifier of its own.
        foreach (var alike in design.Amplifiers.Select(a => Amplifier(catalogue, a.Model)).GroupBy(a => a.Name, StringComparer.Ordinal))
            parts.Add((alike.First(), 2 * alike.Count()));
        foreach (var pad in Pads(design, channels).GroupBy(p => Pad(catalogue, p.Loss).Name, StringComparer.Ordinal))
            parts.Add((Pad(catalogue, pad.First().Loss), 2 * pad.Sum(p => p.Count)));
        return parts.ToImmutable();
    }

    /// <summary>Modules that run a type, cheapest first.</summary>
    public static IEnumerable<ModuleModel> Modules(Catalogue catalogue, string type) => catalogue.Modules
        .Where(m => m.Applications.Any(a => a.MediaName == type)).OrderBy(m => m.Price).ThenBy(m => m.Name, NaturalOrder.Instance);

    /// <summary>What an amplifier of a line draws by the catalogue.</summary>
    public static Watts PowerOf(Catalogue catalogue, LineAmplifier amplifier) =>
        Find(catalogue, LineRole.Amplifier, amplifier.Model.Name, amplifier.Model.Name).Power;

    private static IEnumerable<(Decibels Loss, int Count)> Pads(LineDesign design, int channels)
    {
        foreach (var (loss, _) in design.Amplifiers.SelectMany(a => a.Pads)) yield return (loss, 1);
        if (design.ReceiverPad.Value > 0) yield return (design.ReceiverPad, channels);
    }

    private static SundryModel Multiplexer(Catalogue catalogue, LineScheme scheme, int channels)
    {
        const string coarse = "CWDM ";
        var kind = scheme == LineScheme.CoarseDirect ? coarse : "";
        return catalogue.Sundries.Where(s => s.LineRole == LineRole.Multiplexer && s.Serves.StartsWith(kind, StringComparison.Ordinal)
                && Numerals.TryWhole(s.Serves.AsSpan(kind.Length), out var most) && most >= channels)
            .OrderBy(s => s.Price).FirstOrDefault()
            ?? Missing(LineRole.Multiplexer, $"multiplexer for {kind}{Numerals.Whole(channels)} channels");
    }

    /// <summary>The amplifier of the catalogue; one that is quieter than its kind nobody sells by that name.</summary>
    private static SundryModel Amplifier(Catalogue catalogue, AmplifierModel model) => model is { IsQuieter: true, Figure: { } figure }
        ? Missing(LineRole.Amplifier, $"{model.Name} amplifier of {Numerals.Unit(Math.Round(figure.Value.Value, 2), "dB")} noise figure")
        : Find(catalogue, LineRole.Amplifier, model.Name, $"{model.Name} amplifier");

    private static SundryModel Find(Catalogue catalogue, LineRole role, string serves, string otherwise) => catalogue.Sundries
        .Where(s => s.LineRole == role && s.Serves == serves).OrderBy(s => s.Price).FirstOrDefault() ?? Missing(role, otherwise);

    private static SundryModel Pad(Catalogue catalogue, Decibels loss) => catalogue.Sundries
        .Where(s => s.LineRole == LineRole.Pad && Numerals.TryReal(s.Serves, out var most) && most >= loss.Value)
        .OrderBy(s => s.Price).FirstOrDefault() ?? Missing(LineRole.Pad, $"pad of {Numerals.Unit(Math.Ceiling(loss.Value), "dB")}");

    private static SundryModel Missing(LineRole role, string what) =>
        new() { Name = what, Title = $"{what}, not in the catalogue", LineRole = role };
}
