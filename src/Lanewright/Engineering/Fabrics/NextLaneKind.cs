namespace Lanewright.Engineering.Fabrics;

/// <summary>Parts of a kind, whether they still serve when lanes become one step faster, and why.</summary>
/// <param name="Name">The form of module with its lanes, or the interface type with its fibre.</param>
/// <param name="IsFibre">Whether fibres are counted, not modules.</param>
/// <param name="Serves">Whether they still serve.</param>
/// <param name="Why">What takes them, or what is in the way.</param>
/// <param name="Count">How many there are.</param>
public sealed record NextLaneKind(string Name, bool IsFibre, bool Serves, string Why, long Count);
