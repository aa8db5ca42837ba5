using Lanewright.Engineering.Load.Symmetry;

namespace Lanewright.Engineering.Load;

/// <summary>Orbits of pairs of a source and a thing (a directed link, or a node) under symmetries that move both.</summary>
internal sealed class PairOrbits
{
    private readonly UnionFind pairs;
    private readonly int things;

    /// <summary>Finds the orbits.</summary>
    /// <param name="sources">The sources, rising, as nodes.</param>
    /// <param name="things">Things there are.</param>
    /// <param name="symmetries">The symmetries.</param>
    /// <param name="movesOf">What a symmetry does to things.</param>
    public PairOrbits(int[] sources, int things, IEnumerable<Generator> symmetries, Func<Generator, (int From, int To)[]> movesOf)
    {
        this.things = things;
        pairs = new UnionFind(sources.Length * things);
        foreach (var symmetry in symmetries) Join(sources, symmetry, movesOf(symmetry));
    }

    /// <summary>The lowest pair in the orbit of a pair; a pair is the place of its source times the number of things, plus the
    /// thing.</summary>
    public int Of(int source, int thing) => pairs.Find((source * things) + thing);

    private void Join(int[] sources, Generator symmetry, (int From, int To)[] moves)
    {
        var isMoved = new bool[things];
        foreach (var (from, _) in moves) isMoved[from] = true;
        var sourceMoves = symmetry.Vertices
            .Select(v => (From: Array.BinarySearch(sources, v.From), To: Array.BinarySearch(sources, v.To)))
            .Where(v => v.From >= 0)
            .ToDictionary(v => v.From, v => v.To);
        for (var source = 0; source < sources.Length; source++)
        {
            var image = sourceMoves.GetValueOrDefault(source, source);
            foreach (var (from, to) in moves) pairs.Join((source * things) + from, (image * things) + to);
            if (image == source) continue;
            for (var thing = 0; thing < things; thing++)
                if (!isMoved[thing]) pairs.Join((source * things) + thing, (image * things) + thing);
        }
    }
}
