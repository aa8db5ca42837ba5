using Lanewright.Deliverables;
using Lanewright.Deliverables.Drawings.Floor;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>Where things of a plan are told of and where they are drawn, by the names that drawings, tables and findings call
/// them.</summary>
internal sealed class Whereabouts
{
    private readonly DesignedPlan designed;
    private readonly Lazy<Dictionary<string, int>> devices;
    private readonly Lazy<Dictionary<string, Whereabout>> others;

    /// <summary>Takes a plan.</summary>
    public Whereabouts(DesignedPlan designed)
    {
        this.designed = designed;
        devices = new(Devices);
        others = new(Others);
    }

    /// <summary>Where a thing is; null when the plan has none of this name.</summary>
    /// <param name="name">A device, a port of one (<c>device:port</c>), a rack, a link, a cable, a class, a set of links, a tray, a demand,
    /// a line, a trunk, a part or the code of a rule.</param>
    public Whereabout? Of(string name)
    {
        if (others.Value.TryGetValue(name, out var found)) return found;
        if (devices.Value.TryGetValue(name, out var device)) return OfDevice(device, name);
        if (LinkOf(name) is { } link) return OfLink(link);
        if (Numbered(name.TrimEnd('a', 'b'), 'C') is { } cable && cable <= designed.Design.Cables.Length)
            return OfLink(designed.Design.Cables[cable - 1].FirstLink);
        var colon = name.LastIndexOf(':');
        return colon > 0 && devices.Value.TryGetValue(name[..colon], out device) ? OfDevice(device, name) : null;
    }

    /// <summary>The number of a link, from 0, by its identifier; null when the plan has no such link.</summary>
    public int? LinkOf(string name) => Numbered(name, 'L') is { } number && number <= designed.Plan.Links.Count ? number - 1 : null;

    /// <summary>Named things of the plan other than devices, racks, classes and parts that have some words in their names.</summary>
    public IEnumerable<(string Name, SheetPlace Page)> Containing(string words) => others.Value
        .Where(o => o.Value.Page.Sheet is "floor" or "fabric" or "lines" or "plant" or "why"
            && o.Key.Contains(words, StringComparison.OrdinalIgnoreCase))
        .Select(o => (o.Key, o.Value.Page)).OrderBy(o => o.Key, Text.NaturalOrder.Instance);

    /// <summary>What a finding is about, which may name both ends of a link.</summary>
    public Whereabout? OfSubject(string subject) =>
        Of(subject) ?? subject.Split([" to ", " and ", ", "], StringSplitOptions.TrimEntries).Select(Of).FirstOrDefault(w => w is not null);

    private static int? Numbered(string name, char letter) =>
        name.Length > 1 && name[0] == letter && Numerals.TryWhole(name.AsSpan(1), out var number) && number is > 0 and < int.MaxValue
            ? (int)number
            : null;

    private Whereabout OfDevice(int device, string mark)
    {
        var name = designed.Plan.Devices.Name(device);
        var page = new SheetPlace("devices", name, mark == name ? "" : mark);
        return new Whereabout(page, designed.Plan.Devices.Rack(device) is { } rack ? new SheetPlace("racks", Site.Rack(rack), name) : null);
    }

    private Whereabout OfLink(int link)
    {
        var page = new SheetPlace("links", Identifiers.Link(link), "");
        return new Whereabout(page, OfDevice(designed.Plan.Links.FromDevice(link), "").Drawing);
    }

    private Dictionary<string, int> Devices()
    {
        var all = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var device = 0; device < designed.Plan.Devices.Count; device++) all.TryAdd(designed.Plan.Devices.Name(device), device);
        return all;
    }

    /// <summary>Everything there is little of. Where two things share a name, the first of this list has it.</summary>
    private Dictionary<string, Whereabout> Others()
    {
        var all = new Dictionary<string, Whereabout>(StringComparer.Ordinal);
        void Add(string name, SheetPlace page, SheetPlace? drawing = null) => all.TryAdd(name, new Whereabout(page, drawing));
        foreach (var kind in RuleBook.Kinds) Add(kind.Code, new SheetPlace("rules", kind.Code, ""));
        Places(Add);
        foreach (var study in designed.Load.Demands)
        {
            var place = new SheetPlace("fabric", Identifiers.Demand(study.Demand.Index), "");
            Add(study.Demand.Name, place);
            Add(place.Thing, place);
        }
        foreach (var choice in designed.Design.Choices)
            for (var share = 0; share < Math.Max(1, choice.Shares.Length); share++) Add(Identifiers.Class(choice.Class.Index, share),
                ClassPlace(choice.Class.Index, share));
        foreach (var name in designed.Plan.Lines.Select(l => l.Name).Concat(designed.Plan.Spans.Select(s => s.Name)))
            Add(name, new SheetPlace("lines", "", name));
        foreach (var trunk in designed.Plan.Trunks) Add(trunk.Name, new SheetPlace("plant", "", trunk.Name));
        foreach (var set in designed.Plan.Statements) Add(set.Name, new SheetPlace("links", "", set.Name));
        foreach (var part in designed.Parts) Add(part.Item.Name, new SheetPlace("parts", part.Item.Name, ""));
        return all;
    }

    private static SheetPlace ClassPlace(int index, int share) => new("classes", Identifiers.Class(index, share), "");

    private void Places(Action<string, SheetPlace, SheetPlace?> add)
    {
        var halls = FloorSet.Halls(designed.Plan.Building);
        SheetPlace? Floor(Hall hall, string mark) =>
            halls.IndexOf(hall) is >= 0 and var i ? new SheetPlace("floor", Identifiers.Floor(i + 1), mark) : null;
        foreach (var rack in designed.Plan.Building.Racks)
        {
            add(Site.Rack(rack), new SheetPlace("racks", Site.Rack(rack), ""), new SheetPlace("racks", Site.Rack(rack), rack.Name));
            add(rack.Name, new SheetPlace("racks", Site.Rack(rack), ""), new SheetPlace("racks", Site.Rack(rack), rack.Name));
        }
        foreach (var pathway in designed.Plan.Building.Pathways)
        {
            var why = new SheetPlace("why", WhyTray.Name(pathway), "");
            var floor = Floor(pathway.Hall, pathway.Name);
            add(pathway.FullName, why, floor);
            add(pathway.Name, why, floor);
        }
        foreach (var hall in halls)
            if (Floor(hall, "") is { } floor) add(hall.FullName, floor, null);
        foreach (var feed in designed.Plan.Power)
            if (feed.Racks is [var first, ..])
                add(feed.Name, new SheetPlace("why", "feed/" + feed.Name, ""),
                    new SheetPlace("racks", Site.Rack(designed.Plan.Building.Racks[first]), feed.Name));
    }
}
