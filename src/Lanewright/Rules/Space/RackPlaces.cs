using Lanewright.Engineering.Space;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Rules.Space;

/// <summary>Where a plan says what stands in a rack.</summary>
internal static class RackPlaces
{
    /// <summary>The rack that is named, and how many more of its row are the same.</summary>
    public static string WithMore(string name, int count) =>
        count > 1 ? $"rack {name} (and {Numerals.Whole(count - 1)} more of its row)" : $"rack {name}";

    /// <summary>The statement of the heaviest device in it.</summary>
    public static SourceSpan SpanOf(Judgement judgement, RackContents contents)
    {
        var devices = judgement.Plan.Devices;
        var heaviest = contents.Devices.MaxBy(d => (RackBook.WeightOf(devices.Group(d)), -d));
        return devices.Group(heaviest).Span;
    }
}
