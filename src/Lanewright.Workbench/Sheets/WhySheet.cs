using Lanewright.Deliverables.Report;

namespace Lanewright.Workbench.Sheets;

/// <summary>Where a number comes from: the lines it is the sum of, or the steps it was reckoned in.</summary>
internal static class WhySheet
{
    /// <summary>Writes it.</summary>
    public static bool Write(SheetPaper paper)
    {
        if (paper.Judged.Designed is not { } designed) return paper.Nothing("Where a number comes from", "The plan cannot be read yet.");
        var (what, rest) = paper.Thing.IndexOf('/') is > 0 and var at ? (paper.Thing[..at], paper.Thing[(at + 1)..]) : (paper.Thing, "");
        return what switch
        {
            "price" => WhyPrice.Write(paper, designed),
            "power" => WhyPower.Write(paper, designed),
            "devices" => WhyDevices.Write(paper, designed),
            "cables" => WhyCables.Write(paper, designed),
            "rack" => WhyRack.Write(paper, designed, rest),
            "verdicts" => WhyVerdicts.Write(paper, designed),
            "length" => WhyLength.Write(paper, designed, rest),
            "tray" => WhyTray.Write(paper, designed, rest),
            "trunk" => WhyTrunk.Write(paper, designed, rest),
            "feed" => WhyFeed.Write(paper, designed, rest),
            ReportLines.Delay => WhyDelay.Write(paper, designed, rest),
            ReportLines.Uptime => WhyUptime.Write(paper, designed, rest),
            "channel" => WhyChannel.Write(paper, designed, rest),
            "down" => WhyDown.Write(paper, designed, rest),
            _ => paper.Unknown("Where a number comes from", $"No number is called '{paper.Thing}'."),
        };
    }
}
