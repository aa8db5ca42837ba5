using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Links;

/// <summary>Holds a channel against the limits of the interface types at its two ends, in both directions.</summary>
public sealed class FibreLinkChecks
{
    private readonly StandardsLibrary standards;
    private readonly Channel channel;
    private readonly InterfaceType from;
    private readonly InterfaceType to;
    private readonly ChannelLoss? lossOfFrom;
    private readonly ChannelLoss? lossOfTo;
    private readonly ChannelLoss? loss;

    private FibreLinkChecks(StandardsLibrary standards, Channel channel, InterfaceType from, InterfaceType to)
    {
        this.standards = standards;
        this.channel = channel;
        this.from = from;
        this.to = to;
        lossOfFrom = ChannelLoss.Of(channel, from);
        lossOfTo = ReferenceEquals(from, to) ? lossOfFrom : ChannelLoss.Of(channel, to);
        loss = IsSameType ? lossOfFrom : ChannelLoss.Worse(lossOfFrom, lossOfTo);
    }

    private bool IsSameType => from.Name == to.Name;

    /// <summary>All comparisons that apply, in their order.</summary>
    public static ImmutableArray<Check> Of(StandardsLibrary standards, Channel channel, InterfaceType from, InterfaceType to) =>
        Of(standards, channel, from, to, out _);

    /// <summary>The same, with the larger loss of the two types, which is null when that of either is not known.</summary>
    public static ImmutableArray<Check> Of(
        StandardsLibrary standards, Channel channel, InterfaceType from, InterfaceType to, out ChannelLoss? loss)
    {
        var link = new FibreLinkChecks(standards, channel, from, to);
        var checks = ImmutableArray.CreateBuilder<Check>();
        checks.Add(link.Loss());
        if (!link.IsSameType) checks.Add(link.Worse(link.Budget));
        checks.Add(link.Reach());
        checks.AddRange(link.MinimumLength());
        if (channel.Fibre.Kind == FibreKind.SingleMode)
        {
            checks.Add(link.Worse(link.DispersionPositive));
            checks.Add(link.Worse(link.DispersionNegative));
            checks.Add(link.Worse(link.Dgd));
        }
        checks.Add(link.Worse(link.Overload));
        checks.AddRange(link.Damage());
        checks.AddRange(new ReflectionChecks(standards, channel, from, to).All());
        loss = link.loss;
        return checks.ToImmutable();
    }

    /// <summary>Which receivers get too much light.</summary>
    public static (bool From, bool To) Overloaded(StandardsLibrary standards, Channel channel, InterfaceType from, InterfaceType to)
    {
        var link = new FibreLinkChecks(standards, channel, from, to);
        return (link.Overload(to, from).Verdict == Verdict.Fail, link.Overload(from, to).Verdict == Verdict.Fail);
    }

    /// <summary>The light of one type's transmitter at the other's receiver.</summary>
    public static Check Overload(StandardsLibrary standards, Channel channel, InterfaceType tx, InterfaceType rx) =>
        new FibreLinkChecks(standards, channel, tx, rx).Overload(tx, rx);

    /// <summary>Runs a comparison for both directions and keeps the worse; equal types need one.</summary>
    private Check Worse(Func<InterfaceType, InterfaceType, Check> compare)
    {
        var forth = compare(from, to);
        if (IsSameType) return forth;
        var back = compare(to, from);
        if (back.Verdict != forth.Verdict) return back.Verdict > forth.Verdict ? back with { End = "from" } : forth with { End = "to" };
        return (back.Margin ?? 0) < (forth.Margin ?? 0) ? back with { End = "from" } : forth with { End = "to" };
    }

    private ChannelLoss? LossOf(InterfaceType type) => ReferenceEquals(type, from) ? lossOfFrom : lossOfTo;

    /// <summary>The type at whose wavelengths the attenuation is not known.</summary>
    private InterfaceType Unlit() => lossOfFrom is null ? from : to;

    private Check Loss()
    {
        if (loss is null)
            return Check.Unknown(CheckNames.ChannelLoss,
                $"the attenuation of {channel.Fibre.Name} is not known at the wavelengths of {Unlit().Name}");
        var limit = Smaller(LossLimit(from), LossLimit(to));
        var check = Check.AtMost(CheckNames.ChannelLoss, loss.Maximum.Value, limit?.As(l => l.Value), "dB", loss.Mark);
        if (limit is null)
        {
            var silent = LossLimit(from) is null ? from : to;
            return check with { Note = $"no loss limit of {silent.Name} is known over {channel.Fibre.Name}" };
        }
        check = check with { Note = string.Join(", ", loss.Parts.Select(p => $"{p.What} {p.Loss}")) + $" at {loss.WorstWavelength}" };
        return channel.Fibre.Kind == FibreKind.MultiMode ? check.WithLimitRoundedTo(PrintedStep) : check;
    }

    /// <summary>Multimode channel losses are sums rounded to a tenth: 1.525 dB is printed as 1.5, 1.745 as 1.8.</summary>
    private const double PrintedStep = 0.1;

    /// <summary>Past the plain reach only the limit of an engineered link is left. A shorter link may have the same loss: what the plain
    /// limit leaves out of the budget is there all the same.</summary>
    private Known<Decibels>? LossLimit(InterfaceType type) =>
        IsEngineered(type) || BorrowsEngineered(type) ? type.LossMaxEngineered ?? type.LossMax(channel.Fibre) : type.LossMax(channel.Fibre);

    /// <summary>Whether a link of plain length has to be held against the limit of the engineered one: its own is not known, or it
    /// loses more than that.</summary>
    private bool BorrowsEngineered(InterfaceType type) =>
        channel.Fibre.Kind == FibreKind.SingleMode
        && !IsEngineered(type)
        && type.Reach(channel.Fibre) is { } plain
        && channel.Length <= plain.Value
        && type.LossMaxEngineered is not null
        && (type.LossMax(channel.Fibre) is not { } limit || loss?.Maximum > limit.Value);

    private bool IsEngineered(InterfaceType type) =>
        channel.Fibre.Kind == FibreKind.SingleMode
        && type.ReachEngineered is { } engineered
        && type.Reach(channel.Fibre) is { } plain
        && channel.Length > plain.Value
        && channel.Length <= engineered.Value;

    private static Known<Decibels>? Smaller(Known<Decibels>? left, Known<Decibels>? right)
    {
        if (left is not { } l || right is not { } r) return null;
        return r.Value < l.Value ? r : l;
    }

    /// <summary>What the transmitter of one type and the receiver of the other allow between them, by the algebra of budgets.</summary>
    private Check Budget(InterfaceType tx, InterfaceType rx)
    {
        var value = LossOf(tx)?.Maximum.Value;
        if (AllowedLoss(tx, rx, channel.Fibre) is not { } allowed)
            return Check.Unknown(CheckNames.PowerBudget, $"launch of {tx.Name} or sensitivity of {rx.Name} is not known");
        return Check.AtMost(CheckNames.PowerBudget, value, allowed, "dB", loss?.Mark ?? Mark.Weak) with
        {
            Note = $"{tx.Name} into {rx.Name}",
        };
    }

    /// <summary>The most loss one transmitter and one receiver allow between them over a fibre, in dB; null when a level is not
    /// known.</summary>
    public static Known<double>? AllowedLoss(InterfaceType tx, InterfaceType rx, Fibre fibre)
    {
        if (tx.TxOmaMinusPenaltyMin is not { } launch) return null;
        if (rx.Penalties(fibre) is not { } penalties || rx.TxPenaltyMax is not { } largestPenalty) return null;
        var allowance = penalties.Value - largestPenalty.Value;
        var weakest = Marks.Weaker(launch.Source.Mark, penalties.Source.Mark);
        double allowed;
        if (rx.Signal.Modulation == Modulation.Pam4)
        {
            if (rx.RxStressedSensitivity is not { } stressed) return null;
            allowed = launch.Value.Dbm + (largestPenalty.Value.Value - stressed.Value.Dbm) - allowance.Value;
            weakest = Marks.Weaker(weakest, stressed.Source.Mark);
        }
        else
        {
            if (rx.RxSensitivity is not { } sensitivity) return null;
            allowed = (launch.Value - sensitivity.Value).Value - allowance.Value;
            weakest = Marks.Weaker(weakest, sensitivity.Source.Mark);
        }
        return new Known<double>(allowed, launch.Source with { Mark = Marks.Weaker(weakest, Mark.Derived) });
    }

    private Check Reach()
    {
        var limit = Shorter(ReachLimit(from), ReachLimit(to));
        var check = Check.AtMost(CheckNames.Reach, channel.Length.Metres, limit?.As(l => l.Metres), "m");
        if (limit is null) return check with { Note = $"no reach is known over {channel.Fibre.Name}" };
        if (check.Verdict != Verdict.Pass) return check;
        var note = IsEngineered(from) || IsEngineered(to)
            ? "engineered link: it may be this long only if the measured channel loss stays inside the limit"
            : BorrowsEngineered(from) || BorrowsEngineered(to)
                ? "loss of an engineered link: it may lose this much only if the channel is measured"
                : "";
        return note.Length == 0 ? check : check with { IsConditional = true, Note = note };
    }

    private Known<Length>? ReachLimit(InterfaceType type) => IsEngineered(type) ? type.ReachEngineered : type.Reach(channel.Fibre);

    private static Known<Length>? Shorter(Known<Length>? left, Known<Length>? right)
    {
        if (left is not { } l || right is not { } r) return null;
        return r.Value < l.Value ? r : l;
    }

    private IEnumerable<Check> MinimumLength()
    {
        var limit = from.LengthMin is { } a && to.LengthMin is { } b ? (b.Value > a.Value ? b : a) : from.LengthMin ?? to.LengthMin;
        if (limit is not { } least) yield break;
        yield return Check.AtLeast(CheckNames.MinimumLength, channel.Length.Metres, least.As(l => l.Metres), "m");
    }

    private Check DispersionPositive(InterfaceType tx, InterfaceType rx)
    {
        var value = tx.Lanes.IsEmpty ? null : FibreDispersion.Largest(channel.Fibre, tx.Lanes[^1].Longest, channel.Length);
        var limit = tx.DispersionMax;
        var most = limit?.As(l => l.PicosecondsPerNanometre);
        return Check.AtMost(CheckNames.DispersionPositive, Printed(value), most, "ps/nm", value?.Source.Mark ?? Mark.Weak)
            with { Note = limit is null ? $"no dispersion limit of {tx.Name} is known" : "" };
    }

    private Check DispersionNegative(InterfaceType tx, InterfaceType rx)
    {
        var value = tx.Lanes.IsEmpty ? null : FibreDispersion.Smallest(channel.Fibre, tx.Lanes[0].Shortest, channel.Length);
        var limit = tx.DispersionMin;
        var least = limit?.As(l => l.PicosecondsPerNanometre);
        return Check.AtLeast(CheckNames.DispersionNegative, Printed(value), least, "ps/nm", value?.Source.Mark ?? Mark.Weak)
            with { Note = limit is null ? $"no dispersion limit of {tx.Name} is known" : "" };
    }

    /// <summary>The limits are printed with two decimals; the value is held against them at the same precision.</summary>
    private static double? Printed(Known<Dispersion>? value) =>
        value is { } known ? Math.Round(known.Value.PicosecondsPerNanometre, 2) : null;

    private Check Dgd(InterfaceType tx, InterfaceType rx)
    {
        var mean = channel.Fibre.Sheet.Real("pmd-max");
        var factor = standards.Practice("dgd", "max-to-mean");
        double? value = mean is { } pmd ? pmd.Value * Math.Sqrt(channel.Length.Kilometres) * factor.Value : null;
        var mark = Marks.Weaker(mean?.Source.Mark ?? Mark.Weak, factor.Source.Mark);
        if (rx.DgdMax is { } limit) return Check.AtMost(CheckNames.Dgd, value, limit.As(l => l.Picoseconds), "ps", mark);
        return DgdBySymbol(rx, value, mark);
    }

    /// <summary>Without a stated limit: a delay that is a small part of a symbol needs none.</summary>
    private Check DgdBySymbol(InterfaceType rx, double? value, Mark mark)
    {
        var share = standards.Practice("dgd", "symbol-share");
        if (rx.Baud is not { } baud || value is null) return Check.Unknown(CheckNames.Dgd, $"no limit of {rx.Name} is known");
        var harmless = 1e12 / baud.Value.SymbolsPerSecond * share.Value / 100;
        var check = Check.AtMost(CheckNames.Dgd, value, new Known<double>(harmless, share.Source), "ps", mark);
        if (check.Verdict == Verdict.Pass) return check;
        return Check.Unknown(
            CheckNames.Dgd, $"no limit of {rx.Name} is known, and the delay is no longer negligible", share.Source);
    }

    /// <summary>By average power and, where both types state it, by modulation amplitude: the worse of the two.</summary>
    private Check Overload(InterfaceType tx, InterfaceType rx)
    {
        var average = Overload(CheckUnits.Average, Highest(tx, tx.TxAverageMax), rx.RxAverageMax, $"{tx.Name} into {rx.Name}");
        if (average.Verdict == Verdict.Unproven) return OverloadOfType(tx, rx);
        if (tx.TxOmaMax is null || rx.RxOmaMax is null) return average;
        var amplitude = Overload(CheckUnits.Amplitude, Highest(tx, tx.TxOmaMax), rx.RxOmaMax, $"{tx.Name} into {rx.Name}");
        return amplitude.Margin < average.Margin ? amplitude : average;
    }

    private static Check Overload(string unit, Known<PowerLevel>? highest, Known<PowerLevel>? most, string direction)
    {
        var check = Check.AtMost(
            CheckNames.Overload, highest?.Value.Dbm, most?.As(l => l.Dbm), unit, highest?.Source.Mark ?? Mark.Weak);
        return check is { Verdict: Verdict.Fail, Margin: { } margin }
            ? check with { Note = $"{direction}: {Numerals.Shown(-margin, "dB")} of attenuation at the receiver cures it" }
            : check;
    }

    /// <summary>Where the levels are not known: between two of a type it may be known how much attenuation they need.</summary>
    private Check OverloadOfType(InterfaceType tx, InterfaceType rx)
    {
        if (tx.Name != rx.Name || tx.OverloadAttenuation is not { } needed || LossOf(tx) is not { } least)
            return Check.Unknown(CheckNames.Overload, $"launch of {tx.Name} or overload of {rx.Name} is not known");
        return Check.AtLeast(CheckNames.Overload, least.Minimum.Value, needed.As(n => n.Value), "dB", least.Mark) with
        {
            Note = $"levels of {tx.Name} are not known; between two of them the way has to lose {needed.Value}",
        };
    }

    /// <summary>A level of the transmitter less the least the channel takes.</summary>
    private Known<PowerLevel>? Highest(InterfaceType tx, Known<PowerLevel>? launch)
    {
        var least = LossOf(tx)?.Minimum ?? default;
        return launch?.As(level => level - least);
    }

    /// <summary>Said only of receivers whose limit is known: one that is not overloaded is not damaged either.</summary>
    private IEnumerable<Check> Damage()
    {
        if (from.RxDamage is null && to.RxDamage is null) yield break;
        if (from.RxDamage is null) yield return Damage(from, to) with { End = "to" };
        else if (to.RxDamage is null) yield return Damage(to, from) with { End = "from" };
        else yield return Worse(Damage);
    }

    private Check Damage(InterfaceType tx, InterfaceType rx)
    {
        var highest = Highest(tx, tx.TxAverageMax);
        return Check.AtMost(CheckNames.Damage, highest?.Value.Dbm, rx.RxDamage?.As(l => l.Dbm), "dBm", highest?.Source.Mark ?? Mark.Weak);
    }
}
