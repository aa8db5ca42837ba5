using System.Collections.Immutable;
using Lanewright.Model.Plant;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Plant;

/// <summary>The most loss the cabling test may show of a permanent link, by one edition of the standard.</summary>
/// <param name="Edition">The edition, or <see cref="Maxima"/>.</param>
/// <param name="Limit">The limit in dB; null where the edition read gives no value for the kind of fibre.</param>
public sealed record TestLimit(string Edition, Known<double>? Limit)
{
    /// <summary>Stands for an edition where every part is taken at the limit of its kind, whatever cords it is tested with.</summary>
    public const string Maxima = "maxima";

    /// <summary>What the limit is that of, in words.</summary>
    public string Title => TitleOf(Edition);

    /// <summary>What the limits of an edition are those of, in words.</summary>
    public static string TitleOf(string edition) => edition == Maxima ? "component maxima" : "edition " + edition;

    /// <summary>The limit of a permanent link: fibre, the pairs at both ends at the value of reference-grade cords, pairs between them at
    /// the component's limit, splices. Editions differ in what cable may lose.</summary>
    /// <param name="standards">The limits.</param>
    /// <param name="edition">The edition, such as <c>E</c>.</param>
    /// <param name="fibre">The class of fibre.</param>
    /// <param name="length">Its length.</param>
    /// <param name="inner">Mated pairs between the two at the ends.</param>
    /// <param name="splices">Splices.</param>
    public static TestLimit Of(StandardsLibrary standards, string edition, Fibre fibre, Length length, int inner, int splices)
    {
        var end = standards.Cabling("edition-" + edition, fibre.Kind == FibreKind.MultiMode ? "end-multi-mode" : "end-single-mode");
        if (end is not { } ends || Cable(standards, edition, fibre) is not { } glass
            || standards.Cabling("pair", "loss") is not { } pair || standards.Cabling("splice", "loss") is not { } splice)
        {
            return new TestLimit(edition, null);
        }
        var sum = (glass.Value * length.Kilometres) + (2 * ends.Value) + (inner * pair.Value) + (splices * splice.Value);
        // A sum is known no better than the weakest of what it adds up, and that is the one it cites.
        var parts = new[] { ends, glass, pair, splice };
        var used = parts.Where((_, i) => (i != 2 || inner > 0) && (i != 3 || splices > 0));
        return new TestLimit(edition, used.MaxBy(k => k.Source.Mark).As(_ => sum));
    }

    /// <summary>What a kilometre of cable may lose by an edition; null where none is known.</summary>
    public static Known<double>? Cable(StandardsLibrary standards, string edition, Fibre fibre) =>
        standards.Cabling("cable-" + fibre.Name, "attenuation-" + edition) ?? standards.Cabling("cable-" + fibre.Name, "attenuation");

    /// <summary>The limits of several permanent links one behind the other: a sum for each edition, and none where one has none.</summary>
    public static ImmutableArray<TestLimit> Together(IEnumerable<ImmutableArray<TestLimit>> links)
    {
        var all = links.ToList();
        if (all.Count == 0 || all.Exists(l => l.IsEmpty)) return [];
        return [.. all[0].Select(first => Sum(first.Edition, all.Select(l => l.First(t => t.Edition == first.Edition).Limit)))];
    }

    private static TestLimit Sum(string edition, IEnumerable<Known<double>?> limits)
    {
        Known<double>? sum = null;
        foreach (var limit in limits)
        {
            if (limit is not { } known) return new TestLimit(edition, null);
            sum = known.As(v => v + (sum?.Value ?? 0));
        }
        return new TestLimit(edition, sum);
    }

    /// <summary>The limits of trunks by every edition; none where their length or fibre is not known.</summary>
    internal static IEnumerable<TestLimit> Of(StandardsLibrary standards, TrunkGroup trunk, Length? length) =>
        length is { } metres && standards.Fibre(trunk.Cable.Fibre) is { } fibre
            ? standards.CablingEditions.Select(e => Of(standards, e, fibre, metres, trunk.Connections - 2, trunk.Splices))
            : [];
}
