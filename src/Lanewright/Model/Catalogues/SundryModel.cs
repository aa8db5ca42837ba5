using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Catalogues;

/// <summary>A small part: an attenuator, an adapter, or equipment of a line between sites.</summary>
public sealed record SundryModel : ICatalogueItem
{
    /// <inheritdoc/>
    public required string Name { get; init; }

    /// <inheritdoc/>
    public required string Title { get; init; }

    /// <summary>Loss of an attenuator; null for anything else.</summary>
    public Decibels? Attenuation { get; init; }

    /// <summary>What an adapter turns into what, such as <c>QSFP-to-SFP</c>; empty for anything else.</summary>
    public string Adapts { get; init; } = "";

    /// <summary>What a cassette shows at its front and its rear; null for anything else.</summary>
    public CassetteShape? Cassette { get; init; }

    /// <summary>Which arrays an adapter at the front of a panel joins; null for anything else.</summary>
    public CouplingShape? Coupling { get; init; }

    /// <summary>What it does on a line between sites.</summary>
    public LineRole LineRole { get; init; }

    /// <summary>On a line: the type it runs, the wavelengths it takes, or the amplifier it is; empty for anything else.</summary>
    public string Serves { get; init; } = "";

    /// <summary>What it is, by the word that catalogues use.</summary>
    public string Kind => this switch
    {
        { LineRole: LineRole.Multiplexer } => "line-multiplexer",
        { LineRole: LineRole.Amplifier } => "line-amplifier",
        { LineRole: LineRole.Pad } => "line-pad",
        { Cassette: not null } => "cassette",
        { Coupling: not null } => "array-adapter",
        { Attenuation: not null } => "attenuator",
        { Adapts.Length: > 0 } => "adapter",
        _ => "unknown",
    };

    /// <summary>Most power it draws.</summary>
    public Watts Power { get; init; }

    /// <summary>Whether it is an adapter that takes bodies of one family into cages of another.</summary>
    public bool Takes(FormFactor module, FormFactor cage)
    {
        var families = Adapts.Split("-to-");
        return families.Length == 2
            && cage.Name.StartsWith(families[0], StringComparison.Ordinal)
            && module.Name.StartsWith(families[1], StringComparison.Ordinal);
    }

    /// <inheritdoc/>
    public Money Price { get; init; }

    /// <inheritdoc/>
    public Mark PriceMark { get; init; }

    /// <inheritdoc/>
    public SourceSpan Span { get; init; }
}
