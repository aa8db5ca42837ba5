using System.Collections.Immutable;

namespace Lanewright.Engineering.Choice;

/// <summary>Every way a catalogue offers to make a link, fit or not, judged.</summary>
public sealed class SolutionFinder
{
    private readonly AssemblyFinder assemblies;
    private readonly FibreFinder fibres;
    private readonly PairFinder pairs;

    /// <summary>Searches a catalogue under limits and a policy.</summary>
    public SolutionFinder(FinderContext context)
    {
        assemblies = new AssemblyFinder(context);
        fibres = new FibreFinder(context);
        pairs = new PairFinder(context);
    }

    /// <summary>All ways, in no particular order.</summary>
    public ImmutableArray<Solution> All(LinkClass link) => link.Through is null
        ? [.. assemblies.Find(link), .. fibres.Find(link), .. pairs.Find(link)]
        : [.. fibres.Find(link)];
}
