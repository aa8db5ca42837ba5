using Lanewright.Engineering.Lines;
using Lanewright.Quantities;

namespace Lanewright.Rules.Lines;

/// <summary>A frame with fewer places than the multiplexers and amplifiers of its lines take.</summary>
internal sealed class LineShelfFull() : Rule("LW5138", nameof(LineShelfFull))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        if (judgement.Plan.Lines.All(l => l.FromShelves.IsEmpty && l.ToShelves.IsEmpty)) return;
        foreach (var (shelf, (places, _)) in LineShelves.Of(judgement.Plan, judgement.Lines.Value))
        {
            var group = judgement.Plan.Devices.Group(shelf);
            if (places <= group.Model.Slots) continue;
            judgement.Add(this, group.Span,
                $"{judgement.Plan.Devices.Name(shelf)} ({group.Model.Name}) has {Numerals.Whole(group.Model.Slots)} places, and the "
                + $"multiplexers and amplifiers of its lines take {Numerals.Whole(places)}; add a frame, or one for each route",
                judgement.Plan.Devices.Name(shelf));
        }
    }
}
