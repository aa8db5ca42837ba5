using System.Collections.Immutable;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Reads a fibre way as people write it: the types of its parts from end to end, such as <c>B,A,B</c> or
/// <c>A-to-B,straight,A,straight,A-to-A</c>.</summary>
public static class FibreChainReader
{
    /// <summary>Parts a way may have; more is no way anybody builds.</summary>
    private const int MostParts = 40;

    /// <summary>The parts with adapters where array ends meet; false with what is wrong.</summary>
    /// <param name="words">The types of cables, duplex cords and transitions.</param>
    /// <param name="adapters">The types of adapters: one for all, or one for each place where arrays meet.</param>
    /// <param name="table">The types there are.</param>
    /// <param name="parts">The parts.</param>
    /// <param name="problem">What is wrong and what to do.</param>
    public static bool TryRead(
        IReadOnlyList<string> words, IReadOnlyList<string> adapters, PolarityTable table, out ImmutableArray<ArrayPart> parts,
        out string problem)
    {
        parts = [];
        problem = "";
        var read = new List<ArrayPart>();
        foreach (var word in words)
        {
            if (Find(table, word) is { } part) read.Add(part);
            else
            {
                var known = Names(table);
                problem = $"no part is called '{word}'{Spelling.DidYouMean(word, known)}; there are {string.Join(", ", known)}";
                return false;
            }
        }
        problem = Order(read);
        if (problem.Length > 0) return false;
        var joins = Enumerable.Range(1, Math.Max(0, read.Count - 1)).Count(i => IsArrayJoin(read, i));
        if (adapters.Count > 1 && adapters.Count != joins)
        {
            problem = $"arrays meet in {joins} places and {adapters.Count} adapters are named; name one for all, or one for each";
            return false;
        }
        var made = ImmutableArray.CreateBuilder<ArrayPart>();
        var next = 0;
        for (var i = 0; i < read.Count; i++)
        {
            if (i > 0 && IsArrayJoin(read, i))
            {
                var name = adapters.Count > 1 ? adapters[next++] : adapters[0];
                if (table.Part(ArrayPartKind.Adapter, name) is not { } adapter)
                {
                    problem = $"no adapter is called '{name}'; there are types A and B";
                    return false;
                }
                made.Add(adapter);
            }
            made.Add(read[i]);
        }
        parts = made.ToImmutable();
        return true;
    }

    private static bool IsArrayJoin(List<ArrayPart> parts, int i) =>
        parts[i].Kind != ArrayPartKind.Cord && parts[i - 1].Kind != ArrayPartKind.Cord;

    private static ArrayPart? Find(PolarityTable table, string word) =>
        table.Part(ArrayPartKind.Cable, word) ?? table.Part(ArrayPartKind.Cord, word) ?? table.Part(ArrayPartKind.Transition, word);

    private static List<string> Names(PolarityTable table) =>
        [.. table.Parts.Where(p => p.Kind != ArrayPartKind.Adapter).Select(p => p.Name)];

    /// <summary>Duplex cords meet duplex sides of transitions, array cables meet arrays, and a transition stands between the two.</summary>
    private static string Order(List<ArrayPart> parts)
    {
        if (parts.Count is 0 or > MostParts) return $"a way has 1 to {MostParts} parts";
        if (parts.TrueForAll(p => p.Kind == ArrayPartKind.Cord))
            return parts.Count == 1 ? "" : "two duplex cords do not meet without a transition between them";
        var isDuplex = parts[0].Kind != ArrayPartKind.Cable;
        for (var i = 0; i < parts.Count; i++)
        {
            var kind = parts[i].Kind;
            if (kind == ArrayPartKind.Cord && !isDuplex) return "a duplex cord does not meet an array without a transition between them";
            if (kind == ArrayPartKind.Cable && isDuplex)
                return "a duplex port does not meet an array cable without a transition between them";
            var isAgain = i > 0 && parts[i - 1].Kind == kind;
            if (isAgain && kind == ArrayPartKind.Cord) return "between two transitions there is one duplex cord at most";
            if (isAgain && kind == ArrayPartKind.Transition)
                return isDuplex
                    ? "two transitions meet at their duplex ports with a cord between them"
                    : "there is no array cable between the transitions";
            if (kind == ArrayPartKind.Transition) isDuplex = !isDuplex;
        }
        return "";
    }
}
