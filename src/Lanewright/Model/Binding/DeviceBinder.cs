using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Devices;
using Lanewright.Model.Places;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Turns device groups into devices with places and names.</summary>
internal sealed class DeviceBinder(
    PlanTree tree, Catalogue catalogue, Building building, Func<string[], bool> isPlaceInDoubt, FindingSink findings)
{
    private const int MostDevices = 1_000_000;
    private const long MostCages = 20_000_000;

    private readonly List<DeviceGroup> groups = [];
    private readonly List<int> groupOf = [];
    private readonly List<int> rackOf = [];
    private readonly List<short> unitOf = [];
    private readonly List<int> numberInRack = [];
    private readonly Dictionary<string, CageLayout> layouts = new(StringComparer.Ordinal);
    private long cageCount;

    /// <summary>All devices.</summary>
    public DeviceTable Bind()
    {
        foreach (var (name, map, span) in tree.Named("devices", "the group")) AddGroup(name, map, span);
        var table = new DeviceTable([.. groups], building.Racks, [.. groupOf], [.. rackOf], [.. unitOf], [.. numberInRack]);
        RackOccupancy.Check(table, building, findings);
        CheckNames(table);
        return table;
    }

    private void AddGroup(string name, MapNode map, SourceSpan span)
    {
        if (map.Text("model") is not { } modelName) return;
        if (Names.Item<DeviceModel>(catalogue, "device model", modelName, map.SpanOf("model"), findings) is not { } model) return;
        var cards = CardBinder.Bind(map, model, catalogue, findings);
        var layout = LayoutOf(model, cards ?? []);
        var placement = new GroupPlacement(building, isPlaceInDoubt, findings);
        var places = placement.Place(map, model, span);
        var count = places.Count;
        if (!IsBounded(name, span, count, layout)) return;
        var pattern = map.Text("name") is { } text && NamePattern.TryRead(text, out var read) ? read : NamePattern.Default(name, count);
        groups.Add(new DeviceGroup
        {
            Index = groups.Count,
            Name = name,
            Model = model,
            Cards = cards ?? [],
            Layout = layout,
            First = groupOf.Count,
            Count = count,
            Pattern = pattern,
            IsExisting = map.Switch("existing") ?? false,
            IsFaulty = cards is null || placement.IsInDoubt || findings.HasErrorIn(map.Span),
            Feeds = FeedsOf(map),
            Span = span,
        });
        foreach (var place in places)
        {
            groupOf.Add(groups.Count - 1);
            rackOf.Add(place.Rack);
            unitOf.Add((short)place.Unit);
            numberInRack.Add(place.NumberInRack);
        }
    }

    /// <summary>The layout of a model with its cards: groups of the same share one.</summary>
    private CageLayout LayoutOf(DeviceModel model, ImmutableArray<CardModel> cards)
    {
        var words = string.Join('\n', cards.Select(c => c.Name).Prepend(model.Name));
        if (!layouts.TryGetValue(words, out var layout)) layouts[words] = layout = CageLayout.Of(model, cards);
        return layout;
    }

    /// <summary>Where the plan describes its feeds, only those can be named.</summary>
    private ImmutableArray<string> FeedsOf(MapNode map)
    {
        string[] known = [.. tree.Entries("power").Select(e => e.Name).Distinct().Order(NaturalOrder.Instance)];
        var feeds = ImmutableArray.CreateBuilder<string>();
        foreach (var text in map.Texts("feeds").DistinctBy(t => t.Value))
        {
            if (known.Length == 0 || tree.Describes("power", text.Value)) feeds.Add(text.Value);
            else
                findings.Add(ModelFindings.NameUnknown, text.Span,
                    $"no feed of 'power' is called '{text.Value}'; name one of {string.Join(", ", known)}, "
                    + $"or describe '{text.Value}' under 'power'");
        }
        return [.. feeds.Order(NaturalOrder.Instance)];
    }

    private bool IsBounded(string name, SourceSpan span, int count, CageLayout layout)
    {
        cageCount += (long)count * layout.Slots.Length;
        var excess = groupOf.Count + (long)count > MostDevices ? $"{Numerals.Grouped(MostDevices)} devices"
            : cageCount > MostCages ? $"{Numerals.Grouped(MostCages)} cages"
            : null;
        if (excess is not null)
            findings.Add(ModelFindings.PlanOutOfBounds, span, $"with '{name}' the plan has more than {excess}; divide it");
        return excess is null;
    }

    private void CheckNames(DeviceTable table)
    {
        var seen = new HashSet<string>(table.Count, StringComparer.Ordinal);
        var groupNames = groups.Select(g => g.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var group in groups)
        {
            var isTaken = false;
            var isAmbiguous = false;
            for (var i = 0; i < group.Count && !(isTaken && isAmbiguous); i++)
            {
                var name = table.Name(group.First + i);
                if (!seen.Add(name) && !isTaken)
                {
                    isTaken = true;
                    findings.Add(ModelFindings.NameTaken, group.Span,
                        $"two devices are named '{name}'; "
                        + $"give '{group.Name}' a name pattern that tells them apart, such as '{group.Name}-{{n}}'");
                }
                if (isAmbiguous || name == group.Name || !groupNames.Contains(name)) continue;
                isAmbiguous = true;
                findings.Add(ModelFindings.NameAmbiguous, group.Span,
                    $"'{name}' is a device of '{group.Name}' and a group of its own, and a link could mean either; rename one of the two");
            }
        }
    }
}
