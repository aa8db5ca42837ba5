using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Lines;

/// <summary>What dispersion, delays and losses that differ between polarisations come to on a line, and the penalties a type has for
/// them.</summary>
internal sealed class LinePenalties
{
    private readonly LineQuestion question;
    private readonly WavelengthType type;
    private readonly ImmutableArray<AmplifierModel> amplifiers;

    /// <summary>Takes the line and the amplifiers on it.</summary>
    public LinePenalties(LineQuestion question, WavelengthType type, ImmutableArray<AmplifierModel> amplifiers)
    {
        (this.question, this.type, this.amplifiers) = (question, type, amplifiers);
        Dispersions = [.. question.Channels.Channels.Select(DispersionOf)];
        // The amount counts, whichever its sign.
        OfDispersion =
            [.. Dispersions.Select(d => d is { } v ? type.DispersionPenalties.At(Math.Abs(v.PicosecondsPerNanometre)).Value : 0)];
        OfAll = (MeanDelay is { } pmd ? type.PmdPenalties.At(pmd) : default)
            + (Pdl is { } pdl ? type.PdlPenalties.At(pdl.Value) : default)
            + (question.Channels.Channels.Length > 1 ? type.CrosstalkPenalty?.Value ?? default : default)
            + (question.FilterPenalty
                ?? (question.Multiplexes ? type.FilterPenalties.At(question.Channels.Spacing.Gigahertz) : default));
    }

    /// <summary>Largest dispersion of each channel from end to end; null where it is not known.</summary>
    public Dispersion?[] Dispersions { get; }

    /// <summary>Penalty of dispersion of each channel, in dB.</summary>
    public double[] OfDispersion { get; }

    /// <summary>Penalties that all channels share.</summary>
    public Decibels OfAll { get; }

    /// <summary>The most that penalties may take which are printed for their largest values alone: nothing of what the line has
    /// none of.</summary>
    public Decibels Reserve => (MeanDelay is 0 ? default : type.PmdReserve) + (Pdl is { Value: 0 } ? default : type.PdlReserve);

    /// <summary>Mean differential delay from end to end in ps: roots of sums of squares, since axes are turned at random.</summary>
    public double? MeanDelay
    {
        get
        {
            if (amplifiers.Any(a => a.Pmd is null)) return null;
            var squares = amplifiers.Sum(a => Squares.Of(a.Pmd?.Value ?? 0));
            foreach (var span in question.Spans)
            {
                if (span.Pmd is not { } pmd) return null;
                squares += Squares.Of(pmd);
            }
            return Math.Sqrt(squares);
        }
    }

    /// <summary>Polarisation-dependent loss from end to end in dB, by the same rule.</summary>
    public Known<double>? Pdl
    {
        get
        {
            if (question.Pdl is { } stated) return new Known<double>(stated.Value, Citation.OfPlan);
            var muxes = question.Multiplexes ? 2 : 0;
            if (amplifiers.Any(a => a.Pdl is null)) return null;
            var squares = (muxes * Squares.Of(question.Equipment.MultiplexerPdl.Value))
                + amplifiers.Sum(a => Squares.Of(a.Pdl?.Value ?? 0));
            var mark = muxes > 0 ? question.Equipment.MultiplexerPdl.Source
                : amplifiers.IsEmpty ? Citation.OfPlan : amplifiers[0].Pdl?.Source ?? Citation.OfPlan;
            return new Known<double>(Math.Sqrt(squares), mark);
        }
    }

    /// <summary>The comparisons.</summary>
    public IEnumerable<Check> Checks()
    {
        var largest = Dispersions.All(d => d is not null) ? Dispersions.Max(d => Math.Abs(d?.PicosecondsPerNanometre ?? 0)) : (double?)null;
        var mark = Weakest(question.Spans.Select(s => s.DispersionMax?.Source.Mark ?? Mark.Weak));
        yield return Check.AtMost(LineCheckNames.Dispersion, largest, type.DispersionMax, "ps/nm", mark) with
        {
            Note = $"{type.Name} at the longest wavelength, largest of "
                + string.Join(", ", question.Spans.Select(s => s.Fibre.Name).Distinct()),
        };
        foreach (var check in Delays()) yield return check;
        yield return Check.AtMost(LineCheckNames.Pdl, Pdl?.Value, type.PdlMax, "dB", Pdl?.Source.Mark ?? Mark.Weak) with
        {
            Note = question.Pdl is not null ? "" : Roots(
                question.Multiplexes ? $"2 multiplexers of {Numerals.Shown(question.Equipment.MultiplexerPdl.Value, "dB")}" : "",
                Alike(a => a.Pdl?.Value, "dB")),
        };
    }

    /// <summary>Those of differential delay alone.</summary>
    public IEnumerable<Check> Delays()
    {
        var delayMark = Weakest(question.Spans.Select(s => s.Fibre.PmdMax?.Source.Mark ?? Mark.Weak));
        yield return Check.AtMost(LineCheckNames.Pmd, MeanDelay, type.PmdMax, "ps", delayMark) with
        {
            Note = Roots($"fibre {Numerals.Shown(Math.Sqrt(question.Spans.Sum(s => Squares.Of(s.Pmd ?? 0))), "ps")}",
                Alike(a => a.Pmd?.Value, "ps")),
        };
        if (type.DgdMax is { } most)
        {
            var chance = question.Standards.LineValue("dgd", "probability").Value;
            var times = GroupDelay.TimesMean(chance);
            yield return Check.AtMost(LineCheckNames.Dgd, MeanDelay * times, most, "ps", Marks.Weaker(delayMark, Mark.CommonPractice)) with
            {
                Note = $"{Numerals.Plain(Math.Round(times, 2))} times the mean, exceeded with a chance of {Numerals.Scientific(chance)}",
            };
        }
    }

    /// <summary>Parts that add by their squares; nothing where there is one alone.</summary>
    private static string Roots(params string[] parts) => parts.Where(p => p.Length > 0).ToList() is { Count: > 1 } several
        ? string.Join(" and ", several) + ", by the root of the sum of their squares"
        : "";

    /// <summary>The amplifiers in words, with what each adds.</summary>
    private string Alike(Func<AmplifierModel, double?> each, string unit) => string.Join(" and ", amplifiers.GroupBy(a => each(a) ?? 0)
        .Select(g => $"{Numerals.Whole(g.Count())} {(g.Count() == 1 ? "amplifier" : "amplifiers")} of {Numerals.Shown(g.Key, unit)}"));

    private Dispersion? DispersionOf(Frequency channel)
    {
        var sum = default(Dispersion);
        foreach (var span in question.Spans)
        {
            if (span.DispersionMax is not { } largest || span.Glass is not { } glass) return null;
            sum += glass.DispersionAt(largest.Value, channel.Wavelength);
        }
        return sum;
    }

    private static Mark Weakest(IEnumerable<Mark> marks) => marks.Aggregate(Mark.Seen, Marks.Weaker);
}
