using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Standards;

/// <summary>All rows of one subject, by field.</summary>
public sealed class FactSheet
{
    private readonly Dictionary<string, Fact> byField;

    // Limits are asked for once a link; their texts are read once a table.
    private readonly Dictionary<string, Known<double>> numbers = new(StringComparer.Ordinal);

    /// <summary>Takes the rows of a subject in table order; a later row of the same field replaces an earlier one.</summary>
    public FactSheet(string subject, IEnumerable<Fact> facts)
    {
        Subject = subject;
        byField = new(StringComparer.Ordinal);
        foreach (var fact in facts) byField[fact.Field] = fact;
        Facts = [.. byField.Values];
        foreach (var fact in Facts)
            if (Numerals.TryReal(fact.Value, out var value)) numbers[fact.Field] = new Known<double>(value, fact.Source);
    }

    /// <summary>The thing.</summary>
    public string Subject { get; }

    /// <summary>Its rows.</summary>
    public ImmutableArray<Fact> Facts { get; }

    /// <summary>A row, or null.</summary>
    public Fact? this[string field] => byField.GetValueOrDefault(field);

    /// <summary>A value as text, or an empty text.</summary>
    public string Word(string field) => byField.TryGetValue(field, out var fact) ? fact.Value : "";

    /// <summary>A value as text with its source, or null.</summary>
    public Known<string>? Text(string field) => byField.TryGetValue(field, out var fact) ? new(fact.Value, fact.Source) : null;

    /// <summary>A value as a number with its source, or null when there is none or it is no number.</summary>
    public Known<double>? Real(string field) =>
        numbers.TryGetValue(field, out var known) ? known : null;

    /// <summary>A value as a whole number, or a stand-in when there is none.</summary>
    public int Whole(string field, int otherwise = 0) =>
        byField.TryGetValue(field, out var fact) && Numerals.TryWhole(fact.Value, out var value) ? (int)value : otherwise;

    /// <summary>A length with its source, or null.</summary>
    public Known<Length>? Length(string field) =>
        Real(field)?.As(v => byField[field].Unit == "mm" ? Quantities.Length.FromMillimetres(v) : Quantities.Length.FromMetres(v));

    /// <summary>A ratio in dB with its source, or null.</summary>
    public Known<Decibels>? Decibels(string field) => Real(field)?.As(Quantities.Decibels.From);

    /// <summary>A level in dBm with its source, or null.</summary>
    public Known<PowerLevel>? Level(string field) => Real(field)?.As(PowerLevel.FromDbm);

    /// <summary>A signalling rate with its source, or null.</summary>
    public Known<Baud>? Baud(string field) => Real(field)?.As(Quantities.Baud.FromGigabaud);

    /// <summary>A data rate; no rate when there is none.</summary>
    public BitRate Rate(string field) => Real(field) is { } known ? BitRate.FromGigabits(known.Value) : default;

    /// <summary>The words of a value, split at blanks.</summary>
    public ImmutableArray<string> Words(string field) => [.. Word(field).Split(' ', StringSplitOptions.RemoveEmptyEntries)];
}
