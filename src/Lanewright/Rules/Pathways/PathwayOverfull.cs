using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>A tray or duct that holds more cables than it may.</summary>
internal sealed class PathwayOverfull() : Rule("LW4101", nameof(PathwayOverfull))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Building.Pathways.IsEmpty) return;
        var standards = judgement.Plan.Standards;
        foreach (var pathway in judgement.Pathways.Value.Fills.GroupBy(f => f.Pathway))
        {
            var over = pathway.Where(f => Rounding.IsAbove(f.Fill.Value, f.Most(standards).Value)).ToList();
            if (over.MaxBy(f => f.Fill) is not { } worst) continue;
            var most = worst.Most(standards);
            judgement.Add(this, pathway.Key.Span,
                $"'{pathway.Key.FullName}' holds {Numerals.Grouped(worst.Cables)} cables {Places.Of(worst)} and is "
                + $"{Numerals.Shown(worst.Fill.Percent, "%")} full, and {Numerals.Shown(most.Value * 100, "%")} is the most"
                + (pathway.Key.IsDuct ? " by practice, which is not code for communications cable; " : "; ")
                + $"{Why(judgement.Pathways.Value.FixedIn(worst.Segment), worst.Cables)}; make it wider, lay another beside it, or take "
                + "thinner cables",
                pathway.Key.FullName, over.Count, Kind.Severity, new Evidence("fill", worst.Fill.Value, most.Value, "", most.Source));
        }
    }

    /// <summary>Why what is too much was not led another way.</summary>
    private static string Why(int staying, int cables) => staying switch
    {
        0 => "no other way with room was found for what is too much",
        _ when staying == cables => "all of them lie there already or were ordered for this way, and stay",
        _ => $"{Numerals.Grouped(staying)} of them lie there already or were ordered for this way and stay, and no other way with room was "
            + "found for the rest",
    };
}
