using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Notation;

/// <summary>A set of keys with values. Values that do not read as what is asked for come back as null:
/// the shape check has reported and emptied them already.</summary>
/// <param name="Span">Where it stands.</param>
/// <param name="Entries">Its keys in the order of the file.</param>
public sealed record MapNode(SourceSpan Span, ImmutableArray<MapEntry> Entries) : Node(Span)
{
    /// <inheritdoc/>
    public override string Kind => "a set of keys";

    /// <summary>The value of a key, or null.</summary>
    public Node? this[string key]
    {
        get
        {
            foreach (var entry in Entries)
                if (entry.Key.Value == key) return entry.Value;
            return null;
        }
    }

    /// <summary>The place of a key's value, or of the whole map when it has no such key.</summary>
    public SourceSpan SpanOf(string key) => this[key]?.Span ?? Span;

    /// <summary>The map under a key, or null.</summary>
    public MapNode? Map(string key) => this[key] as MapNode;

    /// <summary>The single value under a key, or null.</summary>
    public ScalarNode? Scalar(string key) => this[key] is ScalarNode { IsEmpty: false } scalar ? scalar : null;

    /// <summary>The text under a key, or null.</summary>
    public string? Text(string key) => Scalar(key)?.Value;

    /// <summary>The members under a key: a list's, or the single value itself.</summary>
    public ImmutableArray<ScalarNode> Texts(string key) => this[key] switch
    {
        ScalarNode { IsEmpty: false } scalar => [scalar],
        ListNode list => [.. list.Items.OfType<ScalarNode>().Where(s => !s.IsEmpty)],
        _ => [],
    };

    /// <summary>Yes or no under a key, or null.</summary>
    public bool? Switch(string key) => Text(key) switch { "yes" or "true" or "on" => true, "no" or "false" or "off" => false, _ => null };

    /// <summary>A whole number under a key, or null.</summary>
    public int? Whole(string key) =>
        Text(key) is { } text && Numerals.TryWhole(text, out var value) && value is >= int.MinValue and <= int.MaxValue ? (int)value : null;

    /// <summary>A plain number under a key, or null.</summary>
    public double? Real(string key) => Text(key) is { } text && Numerals.TryReal(text, out var value) ? value : null;

    /// <summary>A number with one of the given units under a key, in the stored unit, or null.</summary>
    public double? InUnits(string key, IReadOnlyList<UnitScale> units) =>
        Text(key) is { } text && UnitText.TryRead(text, units, out var value) ? value : null;

    /// <summary>A length under a key, or null.</summary>
    public Length? Length(string key) => InUnits(key, UnitText.Lengths) is { } v ? Quantities.Length.FromMetres(v) : null;

    /// <summary>A ratio in dB under a key, or null.</summary>
    public Decibels? Decibels(string key) => InUnits(key, UnitText.Ratios) is { } v ? Quantities.Decibels.From(v) : null;

    /// <summary>A data rate under a key, or null.</summary>
    public BitRate? Rate(string key) => InUnits(key, UnitText.Rates) is { } v and >= 0 ? BitRate.FromGigabits(v) : null;

    /// <summary>A power under a key, or null.</summary>
    public Watts? Watts(string key) => InUnits(key, UnitText.Powers) is { } v and >= 0 ? Quantities.Watts.From(v) : null;

    /// <summary>A share under a key, or null.</summary>
    public Share? Share(string key) => InUnits(key, UnitText.Shares) is { } v ? Quantities.Share.From(v) : null;
}
