using Lanewright.Quantities;

namespace Lanewright.Standards;

/// <summary>How bad each of a number of reflections may be.</summary>
/// <param name="Count">Up to this many counted reflections.</param>
/// <param name="Limit">Each of them at or below this.</param>
public sealed record ReflectanceStep(int Count, Known<Decibels> Limit);
