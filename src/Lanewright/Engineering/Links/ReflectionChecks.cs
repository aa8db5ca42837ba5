using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Links;

/// <summary>Holds the reflections of a channel against the rules of the types at its ends.</summary>
internal sealed class ReflectionChecks(StandardsLibrary standards, Channel channel, InterfaceType from, InterfaceType to)
{
    /// <summary>The comparisons that apply.</summary>
    public IEnumerable<Check> All()
    {
        if (channel.Fibre.Kind == FibreKind.MultiMode)
        {
            if (channel.Reflectance is { } stated) yield return MultiMode(stated);
            yield break;
        }
        var each = EachReflectance();
        var forth = Rule(from, each);
        var back = from.Name == to.Name ? forth : Rule(to, each);
        yield return back.Verdict > forth.Verdict || (back.Margin < forth.Margin && back.Verdict == forth.Verdict) ? back : forth;
        if (channel.Connections == 0) yield break;
        foreach (var check in ReturnLoss(each)) yield return check;
        foreach (var check in Interference(each)) yield return check;
    }

    /// <summary>Where the plan states none, a connection reflects as its polish usually does.</summary>
    private Known<Decibels> EachReflectance()
    {
        if (channel.Reflectance is { } stated) return stated;
        var polish = from.Polish == "APC" && to.Polish == "APC" ? "APC" : "UPC";
        return standards.Connector("polish-" + polish)?.Decibels("reflectance")
            ?? throw new InvalidOperationException("no usual reflectance of polish " + polish);
    }

    private Check MultiMode(Known<Decibels> each)
    {
        var limit = standards.Connector("polish-MM")?.Decibels("reflectance-limit");
        return Check.AtMost(CheckNames.Reflectance, each.Value.Value, limit?.As(l => l.Value), "dB", each.Source.Mark);
    }

    private Check Rule(InterfaceType type, Known<Decibels> each)
    {
        if (channel.Connections == 0)
            return Check.Of(CheckNames.Reflectance, true, type.ReflectanceRule?.Source, "no connection between the modules");
        if (type.ReflectanceRule is not { } rule || standards.Reflectance(rule.Value) is not { } table)
            return Check.Unknown(CheckNames.Reflectance, $"no rule of {type.Name} for reflections is known");
        if (table.LimitForAny is { } any) return AtMost(each, any);
        if (table.FullLossAt is { } full) return TwoWay(type, table, full, each, rule.Source.Mark);
        return ByCount(table, each);
    }

    private Check ByCount(ReflectanceTable table, Known<Decibels> each)
    {
        if (table.Floor is { } floor && each.Value <= floor.Value)
        {
            return AtMost(each, floor) with { Note = $"at or below {floor.Value}, so none of them is counted" };
        }
        if (table.LimitFor(channel.Connections) is not { } limit)
        {
            return Check.Of(CheckNames.Reflectance, false, table.Steps[^1].Limit.Source,
                $"{channel.Connections} counted reflections are more than the standard provides for ({table.Steps[^1].Count})");
        }
        return AtMost(each, limit) with { Note = $"{channel.Connections} reflections, {table.Name}" };
    }

    /// <summary>A table whose cells are not known: it is kept where every reflection is small, or where a stricter table is
    /// kept.</summary>
    private Check TwoWay(InterfaceType type, ReflectanceTable table, Known<Decibels> full, Known<Decibels> each, Mark ruleMark)
    {
        if (each.Value <= full.Value)
        {
            var weaker = Marks.Weaker(full.Source.Mark, ruleMark);
            return AtMost(each, full with { Source = full.Source with { Mark = weaker } });
        }
        if (standards.Reflectance(table.Substitute) is { } substitute
            && ByCount(substitute, each) is { Verdict: Verdict.Pass } safe)
        {
            return safe;
        }
        return Check.Unknown(CheckNames.Reflectance,
            $"{type.Name} trades loss against reflections in a table whose cells are not known here; "
            + $"{full.Value} or better at every connection would prove it",
            full.Source);
    }

    private static Check AtMost(Known<Decibels> each, Known<Decibels> limit) =>
        Check.AtMost(CheckNames.Reflectance, each.Value.Value, limit.As(l => l.Value), "dB", each.Source.Mark);

    private IEnumerable<Check> ReturnLoss(Known<Decibels> each)
    {
        var limit = from.ChannelReturnLossMin is { } a && to.ChannelReturnLossMin is { } b
            ? (b.Value > a.Value ? b : a)
            : from.ChannelReturnLossMin ?? to.ChannelReturnLossMin;
        if (limit is not { } least) yield break;
        var value = Reflections.ReturnLoss(channel.Connections, each.Value);
        yield return Check.AtLeast(CheckNames.ReturnLoss, Math.Round(value.Value, 4), least.As(l => l.Value), "dB", each.Source.Mark);
    }

    /// <summary>Both transmitters share the channel; the one of the smaller extinction ratio suffers more.</summary>
    private IEnumerable<Check> Interference(Known<Decibels> each)
    {
        var suffering = new[] { from, to }
            .Where(type => type.ExtinctionRatioMin is { } ratio && ratio.Value.Value > 0)
            .MinBy(type => type.ExtinctionRatioMin?.Value.Value);
        if (suffering?.ExtinctionRatioMin is not { } extinction) yield break;
        var module = standards.Practice("interference", "module-reflectance").As(Decibels.From);
        var warning = standards.Practice("interference", "warning");
        var modulation = suffering.Signal.Modulation;
        var penalty = Reflections.InterferencePenalty(channel.Connections, each.Value, module.Value, extinction.Value, modulation);
        var check = penalty is { } bound
            ? Check.AtMost(CheckNames.Interference, Math.Round(bound.Value, 4), warning, "dB", Mark.Derived)
            : Check.Of(CheckNames.Interference, false, warning.Source, "the bound closes the eye");
        yield return check with { IsAdvice = true };
    }
}
