using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Proves which option is the cheapest at every step of a quantity. Where one option wins at both ends of a part of the range and
/// nothing else is to be had at the easy end for what it costs at the hard end, it wins at every step between: who needs less may buy
/// what does for more, so that no other gets cheaper on the way, and it costs no more. Otherwise the part is halved, down to single
/// steps where the winner changes. What is not settled within the work allowed stays open and is told so.</summary>
internal sealed class StepProof
{
    /// <summary>Parts the range is cut into at first.</summary>
    private const int FirstParts = 4;

    /// <summary>So much is looked into at most.</summary>
    private const long MostLooked = 3_000_000;

    /// <summary>So many questions are answered at most.</summary>
    private const int MostAsked = 320;

    /// <summary>The part of both that may be spent on proofs; the rest is kept to find changes to the step.</summary>
    private const double Proving = 0.75;

    private readonly Sizing sizing;
    private readonly StepAxis axis;
    private readonly Action<int>? step;
    private readonly Dictionary<int, Winner> known = [];
    private readonly PriorityQueue<(int Low, int High), (bool IsAlike, double Width, int Low)> waiting = new();
    private readonly List<StepStretch> between = [];
    private readonly long before;
    private int asked;

    private StepProof(Sizing sizing, StepAxis axis, Action<int>? step)
    {
        this.sizing = sizing;
        this.axis = axis;
        this.step = step;
        before = sizing.Looked;
    }

    /// <summary>The stretches, lowest first and without a hole.</summary>
    /// <param name="sizing">Answers questions.</param>
    /// <param name="axis">The quantity.</param>
    /// <param name="step">Told how many questions have been answered; null when nobody waits.</param>
    /// <param name="winners">What wins at the values that were asked, lowest first.</param>
    public static ImmutableArray<StepStretch> Of(
        Sizing sizing, StepAxis axis, Action<int>? step, out ImmutableSortedDictionary<int, Winner> winners)
    {
        var proof = new StepProof(sizing, axis, step);
        proof.Run();
        winners = proof.known.ToImmutableSortedDictionary();
        return proof.Joined();
    }

    private void Run()
    {
        var marks = axis.Marks(FirstParts);
        At(axis.Now);
        foreach (var (low, high) in marks.Zip(marks.Skip(1))) Wait(low, high);
        while (waiting.TryDequeue(out var part, out _)) Settle(part.Low, part.High);
    }

    /// <summary>Puts a part in the row: first where the winner changes, then the widest.</summary>
    private void Wait(int low, int high)
    {
        var isAlike = At(low).IsLike(At(high));
        if (high - low > 1) waiting.Enqueue((low, high), (isAlike, -(double)(high - low) / high, low));
    }

    private Winner At(int value)
    {
        if (known.TryGetValue(value, out var winner)) return winner;
        step?.Invoke(++asked);
        var near = known.Count == 0 ? null : known.MinBy(k => Math.Abs((long)k.Key - value)).Value.Shape;
        return known[value] = sizing.Cheapest(axis.Ask(value), near, MostAt(value));
    }

    /// <summary>What the nearest harder value costs: what does for it does here. Null where none is known, and where no value bounds
    /// another.</summary>
    private Money? MostAt(int value)
    {
        if (axis.IsUneven) return null;
        var harder = known.Where(k => k.Key != value && axis.Harder(k.Key, value) == k.Key && k.Value.Option is not null).ToList();
        return harder.Count == 0 ? null : harder.MinBy(k => Math.Abs((long)k.Key - value)).Value.Cost;
    }

    private void Settle(int low, int high)
    {
        var isAlike = known[low].IsLike(known[high]);
        if (isAlike && IsProven(low, high)) between.Add(new StepStretch(low + 1, high - 1, known[low], IsProven: true));
        else if (IsSpent(isAlike ? Proving : 1))
            between.Add(new StepStretch(low + 1, high - 1, known[low], IsProven: false));
        else
        {
            var middle = low + ((high - low) / 2);
            Wait(low, middle);
            Wait(middle, high);
        }
    }

    private bool IsSpent(double part) => asked >= MostAsked * part || sizing.Looked - before >= MostLooked * part;

    /// <summary>Whether what wins at both ends wins at every step between.</summary>
    private bool IsProven(int low, int high)
    {
        var (from, to) = (known[low], known[high]);
        if (axis.IsUneven) return false;
        // What cannot be had at the easy end cannot be had at any harder one.
        if (from.Option is null) return known[axis.Easier(low, high)].IsNothing;
        if (axis.KeepsHosts && from.Cost == to.Cost && from.Gap == 0 && to.Gap == 0) return true;
        if (IsSpent(Proving)) return false;
        step?.Invoke(++asked);
        return !sizing.HasRival(axis.Ask(axis.Easier(low, high)), known[axis.Harder(low, high)].Cost, from.Family);
    }

    /// <summary>Values that were asked and what lies between, neighbours of one winner put together; values between two open parts join
    /// these.</summary>
    private ImmutableArray<StepStretch> Joined()
    {
        var all = known.Select(k => new StepStretch(k.Key, k.Key, k.Value, IsProven: true)).Concat(between).OrderBy(s => s.From).ToList();
        var joined = new List<StepStretch>();
        for (var i = 0; i < all.Count; i++)
        {
            var next = all[i];
            var isInside = i > 0 && i + 1 < all.Count && IsOpen(all[i - 1], next) && IsOpen(all[i + 1], next);
            if (isInside) next = next with { IsProven = false };
            if (joined is [.., var last] && last.IsProven == next.IsProven && last.Winner.IsLike(next.Winner))
                joined[^1] = last with { To = next.To };
            else joined.Add(next);
        }
        return [.. joined];
    }

    private static bool IsOpen(StepStretch part, StepStretch value) => !part.IsProven && part.Winner.IsLike(value.Winner);
}
