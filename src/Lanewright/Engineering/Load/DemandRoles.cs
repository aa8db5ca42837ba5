using System.Collections.Immutable;
using Lanewright.Model;
using Lanewright.Model.Demands;

namespace Lanewright.Engineering.Load;

/// <summary>Numbers hosts by the demands they take part in, so that only hosts with the same part in all of them are bundled.</summary>
internal static class DemandRoles
{
    /// <summary>The number of each host; 0 for those that take no part.</summary>
    public static Func<int, int> Of(Plan plan, IReadOnlyList<Demand> demands)
    {
        var roles = new int[plan.Devices.Count];
        foreach (var demand in demands)
        {
            Refine(roles, demand.Senders);
            Refine(roles, demand.Receivers);
        }
        return device => roles[device];
    }

    /// <summary>Whether every group takes part as a whole or not at all.</summary>
    public static bool AreByGroup(Plan plan, IReadOnlyList<Demand> demands) => demands
        .SelectMany(d => new[] { d.Senders, d.Receivers })
        .All(set => set.GroupBy(d => plan.Devices.Group(d).Index).All(g => g.Count() == plan.Devices.Groups[g.Key].Count));

    /// <summary>Splits every role into those that are in a set and those that are not.</summary>
    private static void Refine(int[] roles, ImmutableArray<int> members)
    {
        var next = roles.Max() + 1;
        var renamed = new Dictionary<int, int>();
        foreach (var device in members)
        {
            if (!renamed.TryGetValue(roles[device], out var role)) renamed[roles[device]] = role = next++;
            roles[device] = role;
        }
    }
}
