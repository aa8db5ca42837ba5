using System.Collections.Immutable;
using Lanewright.Engineering.Plant;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>A cable followed from port to port, a fan-out leg by leg.</summary>
/// <param name="Cable">Its identifier.</param>
/// <param name="Of">How many legs it has.</param>
/// <param name="Legs">Those that were asked for.</param>
public sealed record TracedCable(string Cable, int Of, ImmutableArray<TracedLeg> Legs)
{
    /// <summary>The cable of a link; null where nothing is laid for it.</summary>
    /// <param name="designed">The plan.</param>
    /// <param name="named">The link, and whether all legs are asked for.</param>
    public static TracedCable? Followed(DesignedPlan designed, NamedLink named)
    {
        var cable = designed.Design.CableOf(named.Link);
        if (cable < 0) return null;
        var (name, legs, number) = (Identifiers.Cable(cable), ImmutableArray.CreateBuilder<TracedLeg>(), 0);
        for (var link = designed.Design.Cables[cable].FirstLink; number < designed.Design.Cables[cable].Links; link++)
        {
            if (designed.Design.CableOf(link) != cable) continue;
            number++;
            if (!named.IsWholeCable && link != named.Link) continue;
            if (CablePath.Of(designed.Plan, designed.Design, designed.Plant.Value, link, name) is { } path)
                legs.Add(new TracedLeg(Identifiers.Link(link), number, path, designed.Plant.Value.IsPortless(link)));
        }
        return legs.Count == 0 ? null : new TracedCable(name, (int)designed.Design.Cables[cable].Links, legs.ToImmutable());
    }
}
