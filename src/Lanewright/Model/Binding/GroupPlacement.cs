using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Places;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Finds the place of every device of a group.</summary>
internal sealed class GroupPlacement(Building building, Func<string[], bool> isInDoubt, FindingSink findings)
{
    /// <summary>Whether it names racks of a row, hall or site that could not be read.</summary>
    public bool IsInDoubt { get; private set; }

    /// <summary>The places, as many as the group has devices.</summary>
    public List<DevicePlace> Place(MapNode map, DeviceModel model, SourceSpan span)
    {
        var racks = Racks(map);
        var perRack = map.Whole("per-rack") ?? 1;
        var count = map.Whole("count") ?? Math.Max(1, racks.Count * perRack);
        var places = new List<DevicePlace>(Math.Min(count, 1 << 20));
        if (map["racks"] is null)
        {
            for (var i = 0; i < count; i++) places.Add(new DevicePlace(-1, 0, 0));
            return places;
        }
        if (racks.Count == 0)
        {
            if (map["racks"] is ListNode { Items.IsEmpty: true })
                findings.Add(ModelFindings.PlacesDoNotFit, map.SpanOf("racks"),
                    "no rack is named; name racks, or leave 'racks' out for devices without a place");
            return places;
        }
        if (count > racks.Count * perRack)
        {
            findings.Add(ModelFindings.PlacesDoNotFit, span,
                $"{count} devices do not fit into {racks.Count} racks with {perRack} in each; name more racks or raise per-rack");
            count = racks.Count * perRack;
        }
        var first = map.Whole("unit") ?? 1;
        var step = map.Whole("step") ?? Math.Max(1, model.Units);
        // Rack by rack, so that a group of one a rack keeps the order of its racks.
        for (var i = 0; i < count; i++)
        {
            var inRack = i % perRack;
            places.Add(new DevicePlace(racks[i / perRack], first + (inRack * step), inRack + 1));
        }
        return places;
    }

    /// <summary>The racks named under a key, in the order named; those that do not exist are reported.</summary>
    public List<int> Racks(MapNode map, string key = "racks")
    {
        var racks = new List<int>();
        foreach (var text in map.Texts(key)) racks.AddRange(Resolve(text));
        return racks;
    }

    private IEnumerable<int> Resolve(ScalarNode text)
    {
        var parts = text.Value.Split('/', StringSplitOptions.TrimEntries);
        var numbers = parts[^1].Split("..", StringSplitOptions.TrimEntries);
        // A row may be named by a number: 'hall/1' is then the whole row.
        var hasNumbers = (Numerals.TryWhole(numbers[0], out var from) & Numerals.TryWhole(numbers[^1], out var to))
            && numbers.Length <= 2
            && !building.RacksByRow.Contains(string.Join('/', parts));
        var path = string.Join('/', hasNumbers ? parts[..^1] : parts);
        var matches = building.RacksByRow[path].Where(r => !hasNumbers || (r.Number >= from && r.Number <= to)).ToList();
        if (matches.Select(r => r.Hall).Distinct().Count() > 1)
        {
            findings.Add(ModelFindings.NameAmbiguous, text.Span,
                $"'{text.Value}' means racks in several halls; write it as site/hall/row/number");
            return [];
        }
        if (matches.Count == 0 || (hasNumbers && matches.Count != to - from + 1))
        {
            // The place itself has been reported.
            if (isInDoubt(path.Split('/')))
            {
                IsInDoubt = true;
                return [];
            }
            var rows = building.Racks.Select(r => $"{r.Hall.Name}/{r.Row}").Distinct();
            var near = matches.Count > 0
                ? $"; the row has racks 1..{building.Racks.Count(r => r.Hall == matches[0].Hall && r.Row == matches[0].Row)}"
                : Spelling.DidYouMean(path, rows);
            findings.Add(ModelFindings.NameUnknown, text.Span, $"not all racks of '{text.Value}' exist{near}");
        }
        return matches.Select(r => r.Index);
    }
}
