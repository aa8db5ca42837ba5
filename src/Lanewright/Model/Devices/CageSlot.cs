using Lanewright.Model.Catalogues;

namespace Lanewright.Model.Devices;

/// <summary>One cage of a device.</summary>
/// <param name="Cage">What it is.</param>
/// <param name="BankStart">Index of the first cage of its row on the faceplate.</param>
/// <param name="BankCount">How many cages that row has.</param>
/// <param name="Label">Its number as printed: <c>7</c>, or <c>2/7</c> on a card.</param>
public sealed record CageSlot(CageModel Cage, int BankStart, int BankCount, string Label);
