using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Finds where the cheapest option changes along a quantity that goes in whole steps. Changes are looked for over the switches
/// that have won somewhere, by widening steps and then by halving, and count only when the whole catalogue, asked on both sides of
/// the change, says the same; a winner nobody had thought of joins the search. So every change reported is one, to the step; between
/// the values that were asked nothing is claimed.</summary>
/// <param name="sizing">Answers questions.</param>
/// <param name="ask">The question with a value of the quantity.</param>
internal sealed class SwitchingPoints(FocusedSizing sizing, Func<int, WantedFabric> ask)
{
    /// <summary>Changes looked for on one way: two to tell, and the third says where the second option ends.</summary>
    public const int MostChanges = 3;
    private const int MostTries = 6;
    private const int FirstSteps = 32;
    private readonly Dictionary<int, Winner> full = [];

    /// <summary>The winner at a value, over the whole catalogue.</summary>
    public Winner At(int value) => full.TryGetValue(value, out var known) ? known : full[value] = sizing.Fully(ask(value));

    /// <summary>The values between two that were asked over the whole catalogue, lowest first.</summary>
    public IEnumerable<int> Asked(int above, int below) => full.Keys.Where(v => v > above && v < below).Order();

    /// <summary>The values at which a new winner begins on the way from one value to another, nearest first; only the next three.</summary>
    /// <param name="from">Where the way begins.</param>
    /// <param name="to">Where it ends, itself included; above or below.</param>
    public IReadOnlyList<int> Changes(int from, int to)
    {
        var changes = new List<int>();
        while (changes.Count < MostChanges && from != to && Next(from, to) is { } change)
        {
            changes.Add(change);
            from = change;
        }
        return changes;
    }

    private int? Next(int from, int to)
    {
        var (direction, holder) = (Math.Sign(to - from), At(from));
        for (var tries = 0; tries < MostTries; tries++)
        {
            if (Guess(from, to, holder) is not { } guess)
            {
                if (At(to).IsLike(holder)) return null;
                continue;
            }
            if (At(guess - direction).IsLike(holder) && !At(guess).IsLike(holder)) return guess;
            if (!At(guess - direction).IsLike(holder)) to = guess - direction;
        }
        return Halved(from, to, holder, value => At(value).IsLike(holder));
    }

    /// <summary>The first value found at which something else wins among what has won somewhere; null when nothing does.</summary>
    private int? Guess(int from, int to, Winner holder)
    {
        var known = new Dictionary<int, bool>();
        bool Holds(int value) => known.TryGetValue(value, out var holds) ? holds : known[value] = sizing.Quickly(ask(value)).IsLike(holder);
        var direction = Math.Sign(to - from);
        var step = Math.Max(1, from / FirstSteps);
        var last = from;
        while (last != to)
        {
            var next = direction > 0 ? (int)Math.Min(to, (long)last + step) : (int)Math.Max(to, (long)last - step);
            if (!Holds(next)) return Halved(last, next, holder, Holds);
            last = next;
            step += step / 2;
        }
        return null;
    }

    /// <summary>The change between a value that the holder wins and one that it does not; null when it wins both.</summary>
    private static int? Halved(int wins, int loses, Winner holder, Func<int, bool> holds)
    {
        if (holds(loses)) return null;
        while (Math.Abs(loses - wins) > 1)
        {
            var middle = wins + ((loses - wins) / 2);
            if (holds(middle)) wins = middle;
            else loses = middle;
        }
        return loses;
    }
}
