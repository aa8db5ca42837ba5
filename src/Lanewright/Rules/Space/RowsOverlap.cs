using Lanewright.Engineering.Space;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules.Space;

/// <summary>Rows of racks that stand in one another.</summary>
internal sealed class RowsOverlap() : Rule("LW4309", nameof(RowsOverlap), Severity.Warning)
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        foreach (var rows in RackOverlap.Of(judgement.Plan).GroupBy(o => (Hall: o.First.Hall.Index, One: o.First.Row, Two: o.Second.Row)))
        {
            var first = rows.First();
            var hall = first.First.Hall;
            var count = rows.Count();
            judgement.Add(this, hall.Span,
                $"rows {rows.Key.One} and {rows.Key.Two} of {hall.Name} stand in one another: racks {first.First.Name} and "
                + $"{first.Second.Name} overlap by {Numerals.Shown(first.Along.Millimetres, "mm")} along and "
                + $"{Numerals.Shown(first.Across.Millimetres, "mm")} across"
                + (count > 1 ? $", and {Numerals.Whole(count - 1)} more pairs" : "")
                + "; give each row its 'x' and 'y', as lengths of cables are measured with them",
                $"{hall.Name}/{rows.Key.Two}", count);
        }
    }
}
