using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;

namespace Lanewright.Deliverables;

/// <summary>What a line could carry besides, in words.</summary>
public static class LineHeadroomWords
{
    /// <summary>Channels that are left, and types of higher rates; empty for a line that does not pass or is not coherent.</summary>
    public static string Of(LineAnswer answer)
    {
        if (LineHeadroom.Of(answer) is not { } room) return "";
        var used = answer.Question.Channels.Channels.Length;
        var spacing = Numerals.Shown(answer.Question.Channels.Spacing.Gigahertz, "GHz");
        var more = Numerals.Whole(room.MostChannels - used);
        return $"room for {more} more channels {spacing} apart{(used == 1 ? ", with multiplexers" : "")}{Higher(room)}";
    }

    private static string Higher(LineHeadroom room)
    {
        var working = room.HigherRates.Where(h => h.Verdict == Verdict.Pass).GroupBy(h => h.Spacing).Select(g =>
            $"{string.Join(", ", g.Select(h => h.TypeName))} {Numerals.Shown(g.Key.Gigahertz, "GHz")} apart").ToList();
        return working.Count > 0 ? $"; as many channels of {string.Join(" or of ", working)} would work in the same scheme" : "";
    }
}
