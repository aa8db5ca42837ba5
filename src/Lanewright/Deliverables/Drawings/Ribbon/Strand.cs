namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>One path through the cable.</summary>
/// <param name="NearRow">The row of the first end it begins at.</param>
/// <param name="FarEnd">Which of the far ends, from 0.</param>
/// <param name="FarRow">The row there.</param>
/// <param name="Way">Which way it carries.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Fibre">Number of the fibre in its cable; 0 for anything else.</param>
internal sealed record Strand(int NearRow, int FarEnd, int FarRow, StrandWay Way, StrandKind Kind, int Fibre = 0);
