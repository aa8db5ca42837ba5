using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;

namespace Lanewright.Deliverables.Drawings.Ladder;

/// <summary>Says in one line why a way has no loss ladder.</summary>
internal static class LadderReason
{
    /// <summary>The reason.</summary>
    public static string Of(Solution solution) => solution.Medium switch
    {
        CableMedium.Aec or CableMedium.Aoc =>
            "No loss ladder: the cable is active, its ends make the signal anew, and there is no channel to budget. Its longest length is "
                + "the maker's.",
        CableMedium.TwistedPair => "No loss ladder: twisted pair is judged by its category and its length.",
        CableMedium.Dac => "No loss ladder: " + Cause(solution, CheckNames.CopperLoss,
            "the type sets no limit to the loss of the assembly and is judged by its length."),
        _ => "No loss ladder: " + Cause(solution, CheckNames.ChannelLoss, "the loss of the channel cannot be computed."),
    };

    private static string Cause(Solution solution, string name, string otherwise) =>
        solution.Checks.FirstOrDefault(c => c.Name == name) is { Note.Length: > 0 } check ? check.Note + "." : otherwise;
}
