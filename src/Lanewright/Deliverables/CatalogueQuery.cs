using System.Collections.Immutable;
using Lanewright.Model.Binding;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Deliverables;

/// <summary>A search in a catalogue.</summary>
public sealed record CatalogueQuery(StandardsLibrary Library, Catalogue Catalogue)
{
    /// <summary>Kinds of item by the word that asks for them.</summary>
    public static ImmutableArray<string> Kinds { get; } =
        ["switch", "chassis", "host", "panel", "card", "module", "DAC", "AEC", "AOC", "cord", .. CatalogueLanguage.SundryKinds];

    /// <summary>Only items of this kind.</summary>
    public string? Kind { get; init; }

    /// <summary>Only items that run ports of this rate.</summary>
    public BitRate? Rate { get; init; }

    /// <summary>Only items that are or take a body of this form factor.</summary>
    public string? FormFactor { get; init; }

    /// <summary>Only items whose name, title or values hold this text.</summary>
    public string? Find { get; init; }

    /// <summary>What is wrong with the question; null when nothing is.</summary>
    public string? Problem
    {
        get
        {
            if (Kind is { } kind && !Kinds.Contains(kind))
                return $"no kind of item is called '{kind}'{Spelling.DidYouMean(kind, Kinds)}; kinds are {string.Join(", ", Kinds)}";
            return FormFactor is { } name && Library.FormFactor(name) is null
                ? $"no form factor is called '{name}'{Spelling.DidYouMean(name, Library.FormFactors.Select(f => f.Name))}"
                : null;
        }
    }

    /// <summary>The items found, kind by kind, each in natural order of names.</summary>
    public ImmutableArray<ICatalogueItem> Answer() =>
        [.. Catalogue.Items.Where(Fits).OrderBy(i => Kinds.IndexOf(PartsView.KindOf(i)))];

    private bool Fits(ICatalogueItem item)
    {
        if (Kind is { } kind && PartsView.KindOf(item) != kind) return false;
        if (Rate is { } rate && !CatalogueSheet.Rates(item).Contains(rate)) return false;
        if (FormFactor is { } formFactor && !CatalogueSheet.FormFactors(item).Contains(formFactor)) return false;
        return Find is not { } text
            || item.Name.Contains(text, StringComparison.OrdinalIgnoreCase)
            || CatalogueSheet.Of(item).Any(v => v.Value.Contains(text, StringComparison.OrdinalIgnoreCase));
    }
}
