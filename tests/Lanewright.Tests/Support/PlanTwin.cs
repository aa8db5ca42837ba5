using System.Text.Json.Nodes;
using Lanewright.Findings;
using Lanewright.Notation;
using Lanewright.Text;

namespace Lanewright.Tests.Support;

/// <summary>Writes a plan anew with the keys of every map in another order. JSON is YAML, so the twin is written as JSON.</summary>
internal static class PlanTwin
{
    /// <summary>The same plan, its keys shuffled by a seed.</summary>
    public static string Shuffled(string plan, int seed)
    {
        var root = YamlTree.Read(new SourceText("plan.yaml", plan), new FindingSink()) ?? throw new InvalidOperationException("no plan");
        return Json(root, new Random(seed))!.ToJsonString();
    }

    /// <summary>A tree as JSON, every single value as a text.</summary>
    public static JsonNode? Json(Node node, Random? order = null)
    {
        switch (node)
        {
            case MapNode map:
                var entries = map.Entries.ToArray();
                order?.Shuffle(entries);
                var json = new JsonObject();
                foreach (var entry in entries) json[entry.Key.Value] = Json(entry.Value, order);
                return json;
            case ListNode list:
                return new JsonArray([.. list.Items.Select(i => Json(i, order))]);
            case ScalarNode { IsEmpty: true }:
                return null;
            default:
                return JsonValue.Create(((ScalarNode)node).Value);
        }
    }
}
