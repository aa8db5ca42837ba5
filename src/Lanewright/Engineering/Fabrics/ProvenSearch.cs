using System.Collections.Immutable;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Asks whether anything fits, question after question, and remembers whether each "no" was proven.</summary>
internal sealed class ProvenSearch(Sizing sizing)
{
    private bool isLastProven = true;

    /// <summary>Whether the last answer is proven.</summary>
    public bool IsLastProven => isLastProven;

    /// <summary>Whether every "no" so far is proven: no search was broken off.</summary>
    public bool IsProven { get; private set; } = true;

    /// <summary>Some design that keeps everything asked for; none where none was found.</summary>
    public ImmutableArray<FabricNeeds> Any(WantedFabric question)
    {
        var found = sizing.Any(question, out isLastProven);
        if (found.IsEmpty && !isLastProven) IsProven = false;
        return found;
    }
}
