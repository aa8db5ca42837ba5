using Lanewright.Findings;
using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Rules.Pathways;

/// <summary>A tray too close to the ceiling to lay cables into it, or a pathway that runs above it.</summary>
internal sealed class HeadroomShort() : Rule("LW4113", nameof(HeadroomShort), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var least = judgement.Plan.Standards.Facility("tray", "headroom");
        foreach (var tray in judgement.Plan.Building.Pathways.Where(p => p is { Route: null, Hall.Ceiling: not null }))
        {
            var free = Free(tray).Millimetres;
            // A riser may well go on to the floor above, and a closed duct needs no room for a hand.
            if (tray.IsRiser || !Rounding.IsBelow(free, tray.IsDuct ? 0 : least.Value)) continue;
            if (free < 0)
            {
                judgement.Add(this, tray.Span,
                    $"'{tray.FullName}' reaches {Numerals.Shown(-free, "mm")} above the ceiling of {tray.Hall.PlainName}; hang it "
                    + "lower, or put 'ceiling' right",
                    tray.FullName, 1, Kind.Severity, new Evidence("headroom", free, 0, "mm", null));
                continue;
            }
            judgement.Add(this, tray.Span,
                $"above '{tray.FullName}' {Numerals.Shown(free, "mm")} are free below the ceiling, and "
                + $"{Numerals.Shown(least.Value, "mm")} are needed for a hand and a cable; hang it lower",
                tray.Name, 1, Kind.Severity, new Evidence("headroom", free, least.Value, "mm", least.Source));
        }
    }

    private static Length Free(Pathway tray) =>
        (tray.Hall.Ceiling ?? default) - Length.Max(tray.FromHeight, tray.ToHeight) - tray.Depth;
}
