using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>What is left of a line when one thing is cut.</summary>
/// <param name="What">The span or the duct.</param>
/// <param name="IsDuct">Whether it is a duct, with all spans in it.</param>
/// <param name="Left">What the line still carries.</param>
/// <param name="RoutesLost">The routes that go with it, from 0.</param>
public sealed record LineCut(string What, bool IsDuct, BitRate Left, ImmutableArray<int> RoutesLost);
