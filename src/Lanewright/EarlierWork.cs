using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Load;
using Lanewright.Notation;
using Lanewright.Text;

namespace Lanewright;

/// <summary>What compilations of earlier states of a plan found and a later one may use again. Everything in it is known by all it depends
/// on, so a compilation that uses it gives the same as one from scratch, byte for byte. Compilations that share it take turns.</summary>
public sealed class EarlierWork
{
    /// <summary>States of a plan after which what none of them wanted is dropped: as far as people go back and forth.</summary>
    private const long MostRounds = 16;
    private const int MostKnown = 100_000;

    /// <summary>Held by the compilation whose turn it is.</summary>
    internal Lock Turn { get; } = new();

    /// <summary>The texts.</summary>
    internal SameTexts Texts { get; } = new();

    /// <summary>What was read from them.</summary>
    internal EarlierReadings Readings { get; } = new();

    /// <summary>How links can be made.</summary>
    internal EarlierSolutions Solutions { get; } = new();

    /// <summary>What networks carry.</summary>
    internal EarlierLoads Loads { get; } = new();

    /// <summary>Begins with another state of the plan.</summary>
    internal void NextRound()
    {
        Readings.NextRound(MostRounds);
        Solutions.NextRound(MostRounds, MostKnown);
        Loads.NextRound(MostRounds);
    }
}
