using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;
using Lanewright.Model.Links;

namespace Lanewright.Model.Binding;

/// <summary>One side of a statement while ports are given out: how cages are split and which of them will do.</summary>
internal sealed class EndDemand
{
    private const string Socket = "RJ45";

    private readonly Dictionary<int, bool[]> suitableByGroup = [];
    private readonly IReadOnlySet<string> farFormFactors;

    /// <summary>Takes a side and the mode its cages run in.</summary>
    /// <param name="id">A number no other side has.</param>
    /// <param name="name">What asks for ports, by its name in the plan.</param>
    /// <param name="end">Its side.</param>
    /// <param name="mode">How each cage is split.</param>
    /// <param name="isListed">Whether the platforms list that mode; when not, any cage is taken and the link rules report it.</param>
    /// <param name="farFormFactors">Form factors of the cages that could take the link at the other side.</param>
    public EndDemand(int id, string name, LinkEnd end, PortMode mode, bool isListed, IReadOnlySet<string> farFormFactors)
    {
        this.farFormFactors = farFormFactors;
        Id = id;
        Name = name;
        End = end;
        Mode = mode;
        IsListed = isListed;
    }

    public int Id { get; }

    public string Name { get; }

    public LinkEnd End { get; }

    public PortMode Mode { get; }

    public bool IsListed { get; }

    /// <summary>Which cages of a group will do.</summary>
    public bool[] SuitableCages(DeviceGroup group)
    {
        if (suitableByGroup.TryGetValue(group.Index, out var suitable)) return suitable;
        suitable = new bool[group.Layout.Slots.Length];
        for (var i = 0; i < suitable.Length; i++) suitable[i] = Suits(group.Layout, i);
        KeepLikeFarEnd(group, suitable);
        // Better a link on a cage of the wrong kind, which is then judged, than no link and no judgement; but a cage that lists
        // the mode, or takes modules at all, before a socket for twisted pair.
        if (!suitable.Contains(true) && End.Ports is null)
            for (var i = 0; i < suitable.Length; i++) suitable[i] = RunsMode(group.Layout.Slots[i].Cage);
        if (!suitable.Contains(true) && End.Ports is null) Array.Fill(suitable, true);
        return suitableByGroup[group.Index] = suitable;
    }

    /// <summary>Where some of the cages are of the same form as those at the other side, those are meant: a socket for a
    /// socket.</summary>
    private void KeepLikeFarEnd(DeviceGroup group, bool[] suitable)
    {
        if (End.Ports is not null || End.Module is not null || !IsListed) return;
        var alike = group.Layout.Slots.Select(s => farFormFactors.Contains(s.Cage.FormFactor.Name)).ToArray();
        if (!suitable.Where((isSuitable, i) => isSuitable && alike[i]).Any()) return;
        for (var i = 0; i < suitable.Length; i++) suitable[i] &= alike[i];
    }

    private bool Suits(CageLayout layout, int cage)
    {
        var model = layout.Slots[cage].Cage;
        if (End.Ports is { } ports && !ports.Numbers.Contains(cage + 1)) return false;
        if (End.UsesAdapter) return model.TakesAdapters || End.Ports is not null;
        if (End.Ports is not null) return true;
        if (End.Module is { } module && !model.FormFactor.Accepts.Contains(module.FormFactor.Name)) return false;
        return RunsMode(model);
    }

    /// <summary>Whether a cage lists the mode or, where no cage does, takes a module.</summary>
    private bool RunsMode(CageModel cage) => IsListed ? cage.Modes.Contains(Mode) : cage.FormFactor.Name != Socket;
}
