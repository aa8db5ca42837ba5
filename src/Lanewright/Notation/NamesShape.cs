namespace Lanewright.Notation;

/// <summary>A map whose keys are names the writer chooses.</summary>
/// <param name="Title">What is named.</param>
/// <param name="Entry">What each name may be set to.</param>
public sealed record NamesShape(string Title, Shape Entry) : Shape
{
    /// <inheritdoc/>
    public override string Expected => $"names of {Title}, each with its description";
}
