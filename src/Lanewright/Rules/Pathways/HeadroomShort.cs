using Lanewright.Findings;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>A tray too close to the ceiling to lay cables into it.</summary>
internal sealed class HeadroomShort() : Rule("LW4113", nameof(HeadroomShort), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var least = judgement.Plan.Standards.Facility("tray", "headroom");
        foreach (var tray in judgement.Plan.Building.Pathways.Where(p => p is { Kind: "tray", Route: null, Hall.Ceiling: not null }))
        {
            var free = Free(tray).Millimetres;
            if (free >= least.Value) continue;
            judgement.Add(this, tray.Span,
                $"above '{tray.FullName}' {Numerals.Shown(Math.Max(0, free), "mm")} are free below the ceiling, and "
                + $"{Numerals.Shown(least.Value, "mm")} are needed for a hand and a cable; hang it lower",
                tray.Name, 1, Kind.Severity, new Evidence("headroom", free, least.Value, "mm", least.Source));
        }
    }

    private static Length Free(Pathway tray) =>
        (tray.Hall.Ceiling ?? default) - Length.Max(tray.FromHeight, tray.ToHeight) - tray.Depth;
}
