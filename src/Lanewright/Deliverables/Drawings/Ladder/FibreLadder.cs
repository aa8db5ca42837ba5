using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Deliverables.Drawings.Ladder;

/// <summary>The ladder of a link over fibre.</summary>
internal sealed class FibreLadder
{
    private const double Same = 1e-9;
    private readonly Solution solution;
    private readonly Channel channel;
    private readonly ChannelLoss loss;
    private readonly Check check;
    private readonly InterfaceType tx;
    private readonly InterfaceType rx;

    private FibreLadder(Solution solution, Channel channel, ChannelLoss loss, Check check, InterfaceType tx, InterfaceType rx)
    {
        this.solution = solution;
        this.channel = channel;
        this.loss = loss;
        this.check = check;
        this.tx = tx;
        this.rx = rx;
    }

    private Check? Budget => solution.Checks.FirstOrDefault(c => c.Name == CheckNames.PowerBudget);

    /// <summary>The ladder, or null when the loss of the channel cannot be computed.</summary>
    public static LadderModel? Of(Solution solution)
    {
        if (solution.Channel is not { } channel) return null;
        if (solution.Checks.FirstOrDefault(c => c.Name == CheckNames.ChannelLoss) is not { Value: { } value } check) return null;
        if (solution.FromApplication?.Optical is not { } from || solution.ToApplication?.Optical is not { } to) return null;
        // The comparison took the worse of both directions; the parts have to be those of the same one.
        var parts = new[] { solution.Loss, ChannelLoss.Of(channel, to) }
            .FirstOrDefault(l => l is not null && Math.Abs(l.Maximum.Value - value) < Same);
        if (parts is null) return null;
        var isBack = solution.Checks.FirstOrDefault(c => c.Name == CheckNames.PowerBudget)?.End == "from";
        return new FibreLadder(solution, channel, parts, check, isBack ? to : from, isBack ? from : to).Build(isBack);
    }

    private LadderModel Build(bool isBack)
    {
        var top = Top();
        return new LadderModel
        {
            Start = tx.TxAverageMin?.Value.Dbm ?? 0,
            IsAbsolute = tx.TxAverageMin is not null,
            Steps = Steps(),
            Loss = loss.Maximum.Value,
            Limits = [.. Limits()],
            Top = top,
            Rows = [.. Rows()],
            Notes = [.. Notes(top)],
            Ends = isBack ? ("transmitter, second end", "receiver, first end") : ("transmitter", "receiver"),
        };
    }

    private double Part(string what) => loss.Parts.FirstOrDefault(p => p.What == what)?.Loss.Value ?? 0;

    private ImmutableArray<LadderStep> Steps()
    {
        var steps = ImmutableArray.CreateBuilder<LadderStep>();
        var measured = channel.MeasuredLoss is not null;
        var glass = measured ? Part("measured") : Part("fibre") + Part(ChannelLoss.MeasuredTrunks);
        var events = measured ? [] : Events();
        var at = 0.0;
        foreach (var (place, kind, cost) in events)
        {
            steps.Add(new LadderStep(LadderStepKind.Stretch, glass * (place - at), place));
            steps.Add(new LadderStep(kind, cost, place));
            at = place;
        }
        steps.Add(new LadderStep(LadderStepKind.Stretch, glass * (1 - at), 1));
        if (Part("attenuator") > 0) steps.Add(new LadderStep(LadderStepKind.Attenuator, Part("attenuator"), 1));
        if (Part("ageing") > 0) steps.Add(new LadderStep(LadderStepKind.Ageing, Part("ageing"), 1));
        return steps.ToImmutable();
    }

    /// <summary>Mated pairs and splices, each kind spread evenly over the way.</summary>
    private List<(double Place, LadderStepKind Kind, double Loss)> Events()
    {
        var events = new List<(double Place, LadderStepKind Kind, double Loss)>();
        var pairs = Math.Max(0, channel.Connections - (channel.Stretch?.Connections ?? 0));
        var splices = Math.Max(0, channel.Splices - (channel.Stretch?.Splices ?? 0));
        for (var i = 1; i <= pairs; i++)
            events.Add(((double)i / (pairs + 1), LadderStepKind.MatedPair, channel.ConnectionLoss.Value.Value));
        for (var i = 1; i <= splices; i++)
            events.Add(((double)i / (splices + 1), LadderStepKind.Splice, channel.SpliceLoss.Value.Value));
        // In their order, but never two in one place.
        return [.. events.OrderBy(e => e.Place).ThenBy(e => e.Kind).Select((e, i) => ((i + 1.0) / (events.Count + 1), e.Kind, e.Loss))];
    }

    private IEnumerable<LadderLimit> Limits()
    {
        yield return new LadderLimit("limit of the channel loss", Budget is null ? "" : " (channel loss)", check);
        if (Budget is { } budget) yield return new LadderLimit("power budget of this pair", " (power budget)", budget);
    }

    private LadderTop? Top()
    {
        var overload = solution.Checks.FirstOrDefault(c => c.Name == CheckNames.Overload);
        // Levels are drawn as average power; a comparison by modulation amplitude has no place among them.
        if (overload is not { Value: not null, Unit: CheckUnits.Average } || tx.TxAverageMin is null) return null;
        // The comparison names the receiver it was made at, where the ends differ.
        var launch = (overload.End == "from" ? solution.ToApplication : solution.FromApplication)?.Optical?.TxAverageMax;
        return launch is { } highest ? new LadderTop(highest.Value.Dbm, overload) : null;
    }

    private IEnumerable<LadderRow> Rows()
    {
        if (channel.MeasuredLoss is { } measured)
        {
            var length = channel.Length.ToString();
            yield return new LadderRow("whole channel, measured", length, "", measured.ToString(), LadderStepKind.Stretch);
        }
        else
        {
            var kilometres = channel.Length.Kilometres;
            var each = kilometres > 0 ? $"{Numerals.Plain(Part("fibre") / kilometres)} dB/km at {loss.WorstWavelength}" : "";
            yield return new LadderRow($"fibre, {channel.Fibre.Name}", channel.Length.ToString(), each, Db(Part("fibre")),
                LadderStepKind.Stretch);
            if (channel.Connections > 0)
                yield return new LadderRow("mated pairs", Numerals.Whole(channel.Connections), channel.ConnectionLoss.Value.ToString(),
                    Db(Part("connections")), LadderStepKind.MatedPair);
            if (channel.Splices > 0)
                yield return new LadderRow("splices", Numerals.Whole(channel.Splices), channel.SpliceLoss.Value.ToString(),
                    Db(Part("splices")), LadderStepKind.Splice);
        }
        if (Part("attenuator") > 0) yield return new LadderRow("attenuator", "1", "", Db(Part("attenuator")), LadderStepKind.Attenuator);
        if (Part("ageing") > 0) yield return new LadderRow("kept back for ageing and repair", "", "", Db(Part("ageing")));
        yield return new LadderRow("whole loss", "", "", Db(loss.Maximum.Value), IsTotal: true);
    }

    private static string Db(double value) => Numerals.Unit(value, "dB");

    private IEnumerable<string> Notes(LadderTop? top)
    {
        if (channel.MeasuredLoss is null && channel.Connections + channel.Splices > 0)
            yield return "The plan does not say where along the way mated pairs and splices lie; they are drawn evenly.";
        if (tx.TxAverageMin is null)
            yield return $"The lowest launch of {tx.Name} is not known here, so levels are drawn against the transmitter.";
        else
            yield return "Levels are average power of one lane. The lowest launch is informative in most types; "
                + "the limit of the loss is what counts.";
        if (top is null)
            yield return solution.Checks.Any(c => c.Name == CheckNames.Overload && c.Unit == CheckUnits.Amplitude)
                ? "The brightest case is not drawn: it is judged by modulation amplitude, not by average power."
                : "The brightest case is not drawn: the highest or the lowest launch is not known here.";
        if (tx.Name != rx.Name) yield return $"Drawn from {tx.Name} to {rx.Name}, the direction with less to spare.";
    }
}
