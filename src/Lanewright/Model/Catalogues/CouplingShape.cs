namespace Lanewright.Model.Catalogues;

/// <summary>An adapter at the front of a panel in which an array of a trunk meets one of a cord.</summary>
/// <param name="Connector">The array connector at both sides.</param>
/// <param name="Type">How the keys lie: <c>A</c> up to down, <c>B</c> up to up.</param>
public sealed record CouplingShape(string Connector, string Type)
{
    /// <summary>How it is written, for messages.</summary>
    public const string Example = "MPO-12 type A";

    /// <summary>Reads <c>MPO-12 type A</c>.</summary>
    public static bool TryRead(string text, out CouplingShape? shape)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        shape = words is [var connector, "type", "A" or "B"] ? new CouplingShape(connector, words[2]) : null;
        return shape is not null;
    }
}
