using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Findings;

/// <summary>What a judgement rests on: the value that came out, the limit it was held against, and who set the limit.</summary>
/// <param name="Quantity">What was computed.</param>
/// <param name="Value">The computed value, or null when it could not be.</param>
/// <param name="Limit">The limit, or null when none is known.</param>
/// <param name="Unit">The unit of both.</param>
/// <param name="Source">Where the limit comes from, or null when there is none.</param>
public sealed record Evidence(string Quantity, double? Value, double? Limit, string Unit, Citation? Source)
{
    /// <summary>For a comparison of words, which has neither value nor limit: whether it holds; null for any other.</summary>
    public bool? Holds { get; init; }

    /// <summary>Value, limit and source in one line.</summary>
    public override string ToString()
    {
        var source = Source is null ? "" : $", {Source} [{Marks.Name(Source.Mark)}]";
        if (Holds is { } holds) return Quantity + (holds ? " holds on a condition" : " does not hold") + source;
        var value = Value is { } v ? Numerals.Unit(v, Unit) : "not known";
        var limit = Limit is { } l ? Numerals.Unit(l, Unit) : "not known";
        return $"{Quantity} {value}, limit {limit}{source}";
    }
}
