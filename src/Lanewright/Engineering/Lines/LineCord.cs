using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Lines;

/// <summary>A duplex cord of a line, from module to multiplexer, on to amplifiers and to the panel that fibre of the outside ends
/// in.</summary>
/// <param name="Line">The line, by its number in the plan.</param>
/// <param name="Route">The route, from 0.</param>
/// <param name="Number">Its number on the route, from 1.</param>
/// <param name="Channel">The channel it carries alone; -1 for all of them.</param>
/// <param name="From">One end.</param>
/// <param name="To">The other.</param>
/// <param name="Cord">The cord; null where the catalogue has none.</param>
/// <param name="Way">The way between its ends; null when not known.</param>
/// <param name="Ordered">The length to order; null when not known.</param>
public sealed record LineCord(
    int Line, int Route, int Number, int Channel, LinePoint From, LinePoint To, CordModel? Cord, Length? Way, Length? Ordered);
