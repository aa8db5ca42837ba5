namespace Lanewright.Model.Catalogues;

/// <summary>A number of cages alike on one faceplate.</summary>
/// <param name="Count">How many.</param>
/// <param name="Cage">What each is.</param>
public sealed record CageBank(int Count, CageModel Cage);
