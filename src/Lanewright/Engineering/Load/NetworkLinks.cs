using Lanewright.Model;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Links;

namespace Lanewright.Engineering.Load;

/// <summary>Tells which links of a plan belong to a network. Links that name none belong to the main one, but for those of a management
/// network that can be told by itself: a switch's lone twisted-pair socket never forwards, and the switches that other switches' sockets
/// lead to carry management alone.</summary>
internal static class NetworkLinks
{
    private const string Socket = "RJ45";

    /// <summary>Whether each link belongs to the network of a name; the empty name is the main one.</summary>
    public static bool[] Of(Plan plan, string name)
    {
        var links = new bool[plan.Links.Count];
        for (var link = 0; link < links.Length; link++) links[link] = plan.Statements[plan.Links.Statement(link)].Network == name;
        if (name.Length == 0) LeaveOutManagement(plan, links);
        return links;
    }

    private static void LeaveOutManagement(Plan plan, bool[] links)
    {
        var sockets = LoneSockets(plan);
        var component = new int[plan.Devices.Count];
        for (var i = 0; i < component.Length; i++) component[i] = i;
        for (var link = 0; link < links.Length; link++)
        {
            if (!links[link] || IsSocket(plan, sockets, link) || !JoinsSwitches(plan, link)) continue;
            var (a, b) = (Find(component, plan.Links.FromDevice(link)), Find(component, plan.Links.ToDevice(link)));
            // The lower number wins, so that the answer does not depend on the order of the links.
            component[Math.Max(a, b)] = Math.Min(a, b);
        }
        var managing = new HashSet<int>();
        for (var link = 0; link < links.Length; link++)
        {
            if (!links[link] || !IsSocket(plan, sockets, link) || !JoinsSwitches(plan, link)) continue;
            var isFrom = IsSocket(plan, sockets, plan.Links.FromDevice(link), plan.Links.FromPort(link));
            var (managed, manager) = isFrom
                ? (plan.Links.FromDevice(link), plan.Links.ToDevice(link))
                : (plan.Links.ToDevice(link), plan.Links.FromDevice(link));
            if (Find(component, managed) != Find(component, manager)) managing.Add(Find(component, manager));
        }
        for (var link = 0; link < links.Length; link++)
        {
            links[link] &= !IsSocket(plan, sockets, link)
                && !managing.Contains(Find(component, plan.Links.FromDevice(link)))
                && !managing.Contains(Find(component, plan.Links.ToDevice(link)));
        }
    }

    private static int Find(int[] component, int device)
    {
        while (component[device] != device) device = component[device] = component[component[device]];
        return device;
    }

    private static bool JoinsSwitches(Plan plan, int link) =>
        IsSwitch(plan, plan.Links.FromDevice(link)) && IsSwitch(plan, plan.Links.ToDevice(link));

    private static bool IsSwitch(Plan plan, int device) =>
        plan.Devices.Group(device).Model.Kind is not (DeviceKind.Host or DeviceKind.Panel);

    private static bool IsSocket(Plan plan, int[] sockets, int link) =>
        IsSocket(plan, sockets, plan.Links.FromDevice(link), plan.Links.FromPort(link))
        || IsSocket(plan, sockets, plan.Links.ToDevice(link), plan.Links.ToPort(link));

    private static bool IsSocket(Plan plan, int[] sockets, int device, PortPlace port) =>
        sockets[plan.Devices.Group(device).Index] == port.Cage;

    /// <summary>For each group of switches the cage that is the only socket beside cages of other forms; -1 where there is none.</summary>
    private static int[] LoneSockets(Plan plan)
    {
        var sockets = new int[plan.Devices.Groups.Length];
        foreach (var group in plan.Devices.Groups)
        {
            var slots = group.Layout.Slots;
            var found = Enumerable.Range(0, slots.Length).Where(i => slots[i].Cage.FormFactor.Name == Socket).ToList();
            var isLone = found.Count == 1 && slots.Length > 1 && group.Model.Kind is not (DeviceKind.Host or DeviceKind.Panel);
            sockets[group.Index] = isLone ? found[0] : -1;
        }
        return sockets;
    }
}
