using System.Collections.Immutable;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Places;

namespace Lanewright.Deliverables.Fabrics;

/// <summary>Devices of an option that one group of a plan can describe: so many in each rack, from one unit up in even steps.</summary>
/// <param name="Name">Its name in the plan.</param>
/// <param name="First">Place of its first device in the option's group, from 0.</param>
/// <param name="Count">How many devices it has.</param>
/// <param name="Racks">Where they stand, in order.</param>
/// <param name="PerRack">How many in each rack; fewer in the last.</param>
/// <param name="Unit">Lowest rack unit of the first in a rack.</param>
/// <param name="Step">Rack units from one to the next in a rack.</param>
internal sealed record PlacedGroup(string Name, int First, int Count, ImmutableArray<Rack> Racks, int PerRack, int Unit, int Step)
{
    /// <summary>The devices of an option's group as groups of a plan: one where they stand evenly, else as many as it takes.</summary>
    /// <param name="group">The group.</param>
    /// <param name="fedFrom">The feeds of a rack: devices of one group draw from the same.</param>
    public static ImmutableArray<PlacedGroup> Of(FabricGroup group, Func<Rack, string> fedFrom)
    {
        var found = new List<PlacedGroup>();
        for (var at = 0; at < group.Places.Length; at += found[^1].Count) found.Add(Next(group, at, fedFrom));
        return found.Count == 1 ? [.. found] : [.. found.Select((g, i) => g with { Name = group.Name + "-" + Letters(i) })];
    }

    /// <summary>The longest even stretch from a device on.</summary>
    private static PlacedGroup Next(FabricGroup group, int first, Func<Rack, string> fedFrom)
    {
        var places = group.Places;
        var perRack = RunInRack(places, first);
        var step = perRack > 1 ? places[first + 1].Unit - places[first].Unit : Math.Max(1, group.Model.Units);
        var racks = ImmutableArray.CreateBuilder<Rack>();
        var (at, fed) = (first, fedFrom(places[first].Rack));
        while (at < places.Length)
        {
            var run = RunInRack(places, at);
            var isAlike = run <= perRack && places[at].Unit == places[first].Unit
                && (run == 1 || places[at + 1].Unit - places[at].Unit == step)
                && !racks.Contains(places[at].Rack)
                && (racks.Count == 0 || racks[^1] == places[at].Rack || fedFrom(places[at].Rack) == fed);
            if (!isAlike) break;
            racks.Add(places[at].Rack);
            at += run;
            if (run < perRack) break;
        }
        return new PlacedGroup(group.Name, first, at - first, racks.ToImmutable(), perRack, places[first].Unit, step);
    }

    /// <summary>How many devices follow one another in one rack in even steps upward.</summary>
    private static int RunInRack(ImmutableArray<FabricPlace> places, int first)
    {
        var end = first + 1;
        while (end < places.Length && places[end].Rack == places[first].Rack && places[end].Unit > places[end - 1].Unit
            && places[end].Unit - places[end - 1].Unit == places[first + 1].Unit - places[first].Unit)
        {
            end++;
        }
        return end - first;
    }

    private static string Letters(int number)
    {
        var letter = ((char)('a' + (number % 26))).ToString();
        return number < 26 ? letter : Letters((number / 26) - 1) + letter;
    }
}
