using System.Collections.Immutable;
using Lanewright.Model.Places;

namespace Lanewright.Engineering.Pathways;

/// <summary>Ducts one behind the other that cables are pulled through at once: a run ends where it opens into a tray or at a place to pull
/// from that the plan states.</summary>
/// <param name="Ducts">The ducts in their order.</param>
/// <param name="Metres">The longest way between two places to pull from.</param>
/// <param name="Degrees">The most that the run turns between two places to pull from; routes between halls count as straight.</param>
public sealed record DuctRun(ImmutableArray<Pathway> Ducts, double Metres, double Degrees)
{
    /// <summary>The runs of a building.</summary>
    public static IEnumerable<DuctRun> Of(WayNet net) => new DuctRunFinder(net).All();

    /// <summary>Looks along ducts in line.</summary>
    /// <param name="ducts">Each with its place in the graph.</param>
    /// <param name="turns">Degrees between each and the one before; nothing for the first.</param>
    internal static DuctRun Along(IReadOnlyList<Pathway> ducts, IReadOnlyList<double> turns)
    {
        var (metres, degrees) = (0.0, 0.0);
        var (mostMetres, mostDegrees) = (0.0, 0.0);
        for (var i = 0; i < ducts.Count; i++)
        {
            degrees += turns[i];
            // Places to pull from divide a duct evenly.
            var part = ducts[i].Length.Metres / (ducts[i].PullPoints + 1);
            metres += part;
            Note();
            if (ducts[i].PullPoints == 0) continue;
            (metres, degrees) = (part, 0);
            Note();
        }
        return new DuctRun([.. ducts], mostMetres, mostDegrees);

        void Note() => (mostMetres, mostDegrees) = (Math.Max(mostMetres, metres), Math.Max(mostDegrees, degrees));
    }
}
