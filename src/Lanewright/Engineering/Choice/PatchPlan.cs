using System.Collections.Immutable;
using Lanewright.Engineering.Links;

namespace Lanewright.Engineering.Choice;

/// <summary>The cords of a way through trunks, or what stands in their way.</summary>
/// <param name="Cords">The cords from the first end of the link to the second; empty where one is missing.</param>
/// <param name="Problem">What is wrong; null where nothing is.</param>
/// <param name="LinksPerCable">Links that share one module at the split end.</param>
internal sealed record PatchPlan(ImmutableArray<PatchCord> Cords, Check? Problem, int LinksPerCable);
