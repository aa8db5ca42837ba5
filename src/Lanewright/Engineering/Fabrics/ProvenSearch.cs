using System.Collections.Immutable;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Asks whether anything fits, question after question, and remembers whether each "no" was proven.</summary>
internal sealed class ProvenSearch(Sizing sizing)
{
    /// <summary>So many questions whose search was broken off are asked once more with more effort.</summary>
    private const int MostAgain = 4;

    private bool isLastProven = true;
    private int again;

    /// <summary>Whether the last answer is proven.</summary>
    public bool IsLastProven => isLastProven;

    /// <summary>Whether every "no" so far is proven: no search was broken off.</summary>
    public bool IsProven { get; private set; } = true;

    /// <summary>Some design that keeps everything asked for; none where none was found.</summary>
    public ImmutableArray<FabricNeeds> Any(WantedFabric question) => Any([question]);

    /// <summary>Some design that keeps everything asked for in one of several questions; none where none was found.</summary>
    public ImmutableArray<FabricNeeds> Any(IEnumerable<WantedFabric> questions)
    {
        isLastProven = true;
        foreach (var question in questions)
        {
            var found = sizing.Any(question, SizingEffort.First, out var isProven);
            if (!isProven && found.IsEmpty && again++ < MostAgain) found = sizing.Any(question, SizingEffort.Again, out isProven);
            if (!found.IsEmpty) return found;
            isLastProven &= isProven;
        }
        IsProven &= isLastProven;
        return [];
    }
}
