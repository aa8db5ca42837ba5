using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Copper;

/// <summary>Holds a passive copper assembly against its interface type.</summary>
public sealed record CopperChecks(ImmutableArray<Check> All, string NeededFec)
{
    /// <summary>Two tabled frequencies are taken for the same when they differ by less than this part.</summary>
    private const double FrequencyTolerance = 0.01;

    /// <summary>All comparisons of an assembly.</summary>
    /// <param name="standards">The limits.</param>
    /// <param name="type">Interface type of each leg.</param>
    /// <param name="gauge">American wire gauge.</param>
    /// <param name="length">Length of the assembly.</param>
    /// <param name="wholeRate">Rate of the whole assembly, for the project's own limit.</param>
    /// <param name="limits">The project's own limits, by rate.</param>
    public static CopperChecks Of(
        StandardsLibrary standards, CopperType type, int gauge, Length length, BitRate wholeRate, ImmutableArray<CopperLimit> limits)
    {
        var checks = ImmutableArray.CreateBuilder<Check>();
        var loss = AssemblyLoss(standards, type, gauge, length);
        var code = NeededCode(type, loss, length);
        if (type.LossMax is not null || type.Sheet["loss-rule"] is null) checks.Add(Loss(type, gauge, loss));
        checks.Add(Check.AtMost(CheckNames.Reach, length.Metres, type.Reach?.As(l => l.Metres), "m"));
        var own = limits.LastOrDefault(l => l.Rate <= wholeRate);
        if (own is not null)
            checks.Add(Check.AtMost(CheckNames.CopperPractice, length.Metres, new Known<double>(own.Most.Metres, own.Source), "m"));
        return new CopperChecks(checks.ToImmutable(), code);
    }

    /// <summary>Loss of the assembly at half the symbol rate, wire at its upper value and both ends; null when no table holds
    /// it.</summary>
    public static Known<Decibels>? AssemblyLoss(StandardsLibrary standards, CopperType type, int gauge, Length length)
    {
        var frequency = type.Signal.Baud.NyquistGigahertz;
        var wire = standards.TwinaxLosses.FirstOrDefault(t => t.Gauge == gauge && Near(t.Gigahertz, frequency));
        var ends = standards.EndLosses.Where(e => Near(e.Gigahertz, frequency)).Select(e => (Known<Decibels>?)e.Loss).FirstOrDefault();
        if (wire is null || ends is not { } end) return null;
        var loss = Decibels.From((wire.LossMax.Value * length.Metres) + (2 * end.Value.Value));
        var source = wire.LossMax.Source with { Mark = Marks.Weaker(wire.LossMax.Source.Mark, end.Source.Mark) };
        return new Known<Decibels>(loss, source);
    }

    /// <summary>The weakest code whose class of cable this one is, by loss and by length: the strongest of the type when the loss is not
    /// known.</summary>
    private static string NeededCode(CopperType type, Known<Decibels>? loss, Length length)
    {
        if (loss is not { } known) return type.Fec;
        if (IsWithin(type.LossMaxWithoutFec, type.ReachWithoutFec)) return FecSide.None;
        return IsWithin(type.LossMaxBaseR, type.ReachBaseR) ? "BASE-R" : type.Fec;

        bool IsWithin(Known<Decibels>? most, Known<Length>? longest) =>
            most is { } m && known.Value <= m.Value && !(length > longest?.Value);
    }

    private static Check Loss(CopperType type, int gauge, Known<Decibels>? loss)
    {
        var limit = type.LossMax?.As(l => l.Value);
        var check = Check.AtMost(CheckNames.CopperLoss, loss?.Value.Value, limit, "dB", loss?.Source.Mark ?? Mark.Weak);
        var wire = $"{gauge} AWG at {Numerals.Plain(type.Signal.Baud.NyquistGigahertz)} GHz";
        if (loss is null) return check with { Note = $"no loss is tabled for {wire}" };
        return type.LossMax is null ? check with { Note = $"no loss limit of {type.Name} is known" } : check with { Note = wire };
    }

    private static bool Near(double left, double right) => Math.Abs(left - right) <= FrequencyTolerance * right;
}
