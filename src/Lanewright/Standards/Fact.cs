using Lanewright.Text;

namespace Lanewright.Standards;

/// <summary>One row of a standards table: one value of one thing.</summary>
/// <param name="Subject">The thing, such as <c>400GBASE-DR4</c>.</param>
/// <param name="Field">Which of its values, such as <c>loss-max-os2</c>.</param>
/// <param name="Value">The value as text.</param>
/// <param name="Unit">Its unit; empty for words and counts without one.</param>
/// <param name="Source">Who says so, and how well it is known.</param>
/// <param name="Span">The row itself.</param>
public sealed record Fact(string Subject, string Field, string Value, string Unit, Citation Source, SourceSpan Span);
