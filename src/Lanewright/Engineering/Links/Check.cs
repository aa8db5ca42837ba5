using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Links;

/// <summary>One comparison: a value, the limit it is held against and the distance between them. The distance is arithmetic;
/// what to make of it is for the rules.</summary>
public sealed record Check
{
    /// <summary>Rounding in the last places of a sum is not a failure.</summary>
    private const double Rounding = 1e-9;

    private Check(string name)
    {
        Name = name;
    }

    /// <summary>Which comparison, by <see cref="CheckNames"/>.</summary>
    public string Name { get; }

    /// <summary>The computed value; null for a comparison of words, or when it cannot be computed.</summary>
    public double? Value { get; private init; }

    /// <summary>The limit; null for a comparison of words, or when none is known.</summary>
    public double? Limit { get; private init; }

    /// <summary>The unit of both; empty for a comparison of words.</summary>
    public string Unit { get; private init; } = "";

    /// <summary>How far inside the limit the value is; negative outside; null when either is missing.</summary>
    public double? Margin { get; private init; }

    /// <summary>The unit of the distance: between two power levels it is a ratio, in decibels.</summary>
    public string MarginUnit => Unit is CheckUnits.Average or CheckUnits.Amplitude ? "dB" : Unit;

    /// <summary>What it comes to.</summary>
    public Verdict Verdict { get; private init; }

    /// <summary>Who sets the limit; null when nobody is known to.</summary>
    public Citation? Source { get; private init; }

    /// <summary>The weakest mark of the values used.</summary>
    public Mark Mark { get; private init; }

    /// <summary>What a reader should know: why it fails, or what must hold for it to pass; empty when nothing.</summary>
    public string Note { get; init; } = "";

    /// <summary>Whether it passes only if <see cref="Note"/> is seen to.</summary>
    public bool IsConditional { get; init; }

    /// <summary>Whether it is advice, and no part of the verdict.</summary>
    public bool IsAdvice { get; init; }

    /// <summary>Which end it belongs to: <c>from</c>, <c>to</c>, or empty for both.</summary>
    public string End { get; init; } = "";

    /// <summary>The value must not be above the limit.</summary>
    public static Check AtMost(string name, double? value, Known<double>? limit, string unit, Mark mark = Mark.Seen) =>
        Compare(name, value, limit, unit, mark, (v, l) => l - v);

    /// <summary>The value must not be below the limit.</summary>
    public static Check AtLeast(string name, double? value, Known<double>? limit, string unit, Mark mark = Mark.Seen) =>
        Compare(name, value, limit, unit, mark, (v, l) => v - l);

    /// <summary>This comparison against a limit that is printed rounded: what is outside by less than the rounding cannot be told from
    /// inside, and passes on condition.</summary>
    public Check WithLimitRoundedTo(double unit) => Verdict == Verdict.Fail && Margin > -unit / 2
        ? this with
        {
            Verdict = Verdict.Pass,
            IsConditional = true,
            Note = (Note.Length > 0 ? Note + "; " : "")
                + "over the printed limit by less than the step it is rounded to: measure the channel",
        }
        : this;

    /// <summary>This comparison against the most that something may come to: what meets it is proved, and what misses it cannot be
    /// told.</summary>
    public Check OrUnproven() => Verdict == Verdict.Fail ? this with { Verdict = Verdict.Unproven } : this;

    /// <summary>A comparison of words.</summary>
    public static Check Of(string name, bool passes, Citation? source, string note = "") => new(name)
    {
        Verdict = passes ? Verdict.Pass : Verdict.Fail,
        Source = source,
        Mark = source?.Mark ?? Mark.Seen,
        Note = note,
    };

    /// <summary>Passes, if somebody sees to something.</summary>
    public static Check If(string name, Citation? source, string condition) => new(name)
    {
        Verdict = Verdict.Pass,
        Source = source,
        Mark = source?.Mark ?? Mark.Seen,
        Note = condition,
        IsConditional = true,
    };

    /// <summary>Cannot be told.</summary>
    public static Check Unknown(string name, string note, Citation? source = null) => new(name)
    {
        Verdict = Verdict.Unproven,
        Source = source,
        Mark = source?.Mark ?? Mark.Weak,
        Note = note,
    };

    private static Check Compare(
        string name, double? value, Known<double>? limit, string unit, Mark mark, Func<double, double, double> margin)
    {
        double? distance = value is { } v && limit is { } l ? margin(v, l.Value) : null;
        return new Check(name)
        {
            Value = value,
            Limit = limit?.Value,
            Unit = unit,
            Margin = distance,
            Verdict = distance is null ? Verdict.Unproven : distance >= -Rounding ? Verdict.Pass : Verdict.Fail,
            Source = limit?.Source,
            Mark = limit is { } known ? Marks.Weaker(mark, known.Source.Mark) : mark,
        };
    }
}
