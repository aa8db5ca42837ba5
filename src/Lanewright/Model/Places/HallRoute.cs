using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Places;

/// <summary>A way for cables from one hall's exit to another's.</summary>
/// <param name="From">One hall.</param>
/// <param name="To">The other.</param>
/// <param name="Length">How long the way is.</param>
/// <param name="Connections">Mated pairs on it, those at its ends counted; null when the policy decides.</param>
/// <param name="Splices">Splices on the way.</param>
/// <param name="Span">Where the plan says so.</param>
public sealed record HallRoute(Hall From, Hall To, Length Length, int? Connections, int Splices, SourceSpan Span)
{
    /// <summary>Its name; what it joins where the plan gives none.</summary>
    public string Name { get; init; } = From.Name + " to " + To.Name;

    /// <summary>The side of a pair of ways it belongs to; empty when to none.</summary>
    public string Side { get; init; } = "";

    /// <summary>Where it begins.</summary>
    public HallExit FromExit { get; init; } = From.Exit;

    /// <summary>Where it ends.</summary>
    public HallExit ToExit { get; init; } = To.Exit;

    /// <summary>One of its ends: the hall and the exit there.</summary>
    /// <param name="isTo">Whether it is the end that is named second.</param>
    public (Hall Hall, HallExit Exit) EndOf(bool isTo) => isTo ? (To, ToExit) : (From, FromExit);
}
