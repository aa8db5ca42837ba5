using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Lines;

/// <summary>Prices along the ladder: of a design, and the least that one of a scheme could cost, so that a scheme further up is looked at
/// only where it may be cheaper.</summary>
internal sealed class LadderPrices(LineQuestion question)
{
    private readonly Dictionary<string, Money?> modules = new(StringComparer.Ordinal);

    private int Channels => question.Channels.Channels.Length;

    /// <summary>The price of a design; null where it is not known.</summary>
    public LinePrice? Of(LineDesign design) => question.Catalogue is { } catalogue
        ? LinePrice.Of(catalogue, design, question.TerminalsOf?.Invoke(design.TypeName))
        : null;

    /// <summary>Types of a rate by the price of their modules, those without one last.</summary>
    public IEnumerable<WavelengthType> Sorted(IEnumerable<WavelengthType> types) =>
        types.OrderBy(t => Module(t.Name) is null).ThenBy(t => Module(t.Name) ?? Money.Zero);

    /// <summary>Whether a design of a scheme may cost less than so much.</summary>
    public bool MayBeBelow(Money price, LineScheme scheme) => Types(scheme).Any(t => MayBeBelow(price, scheme, t));

    /// <summary>Whether a design of a scheme with a type may cost less than so much; without a price of its modules none is known
    /// to.</summary>
    public bool MayBeBelow(Money price, LineScheme scheme, WavelengthType type) =>
        Module(type.Name) is { } module
        && (module * (2L * Channels)) + (CheapestAmplifier * (2L * AmplifiersOf(scheme))) < price;

    /// <summary>Types that a scheme is tried with.</summary>
    public IEnumerable<WavelengthType> Types(LineScheme scheme) => scheme switch
    {
        LineScheme.Grey => [],
        LineScheme.CoarseDirect or LineScheme.DenseDirect => question.Type is null or { IsCoherent: false }
            ? question.Standards.WavelengthTypes.Where(t => !t.IsCoherent && t.Rate == question.Rate)
            : [],
        _ => question.Type is { } asked
            ? asked.IsCoherent ? [asked] : []
            : question.Standards.WavelengthTypes.Where(t => t.IsCoherent && t.Rate == question.Rate),
    };

    private Money? Module(string type)
    {
        if (question.Catalogue is not { } catalogue) return null;
        if (!modules.TryGetValue(type, out var known))
            modules[type] = known = LineParts.Modules(catalogue, type).FirstOrDefault(m => m.Price > Money.Zero)?.Price;
        return known;
    }

    private Money CheapestAmplifier => question.Catalogue?.Sundries.Where(s => s.LineRole == LineRole.Amplifier && s.Price > Money.Zero)
        .Select(s => s.Price).Order().FirstOrDefault() ?? Money.Zero;

    private int AmplifiersOf(LineScheme scheme) => scheme switch
    {
        LineScheme.Booster or LineScheme.Preamplifier => 1,
        LineScheme.BoosterAndPreamplifier => 2,
        LineScheme.InLine => 2 + 1,
        _ => 0,
    };
}
