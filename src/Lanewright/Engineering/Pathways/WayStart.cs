namespace Lanewright.Engineering.Pathways;

/// <summary>From where and to where a search leads: one serves all questions from a rack to a hall.</summary>
/// <param name="Rack">Index of the rack.</param>
/// <param name="FarHall">Index of the hall where ways end.</param>
/// <param name="Side">Number of the side; 0 for any.</param>
/// <param name="Height">Height in metres of the pathways that cables leave the rack for; not a number where they may leave for
/// any.</param>
internal readonly record struct WayStart(int Rack, int FarHall, int Side, double Height)
{
    /// <summary>Where a question begins, whatever its heights.</summary>
    public static WayStart Of(WayNet net, WayQuestion question) =>
        new(question.From, net.Building.Racks[question.To].Hall.Index, question.Side, double.NaN);

    /// <summary>Where searches for a question begin: one for each height of pathways, where it depends on the height of the device
    /// which of them is the nearest.</summary>
    public static IEnumerable<WayStart> AllOf(WayNet net, WayQuestion question)
    {
        var start = Of(net, question);
        return question.FromHeight is not null && net.DropHeights(question.From) is { } heights
            ? heights.Select(h => start with { Height = h })
            : [start];
    }

    /// <summary>Whether a pathway at a rack lies higher or lower.</summary>
    public bool IsOtherHeight(WayPoint at) => Math.Abs(at.Z - Height) > PathwayJoins.Touch;
}
