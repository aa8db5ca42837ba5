using System.Text.Json.Nodes;
using Json.Schema;
using Lanewright.Deliverables.Json;
using Lanewright.Findings;
using Lanewright.Model.Binding;
using Lanewright.Notation;
using Lanewright.Text;

namespace Lanewright.Tests.Deliverables;

/// <summary>The JSON Schema accepts what the checker accepts, by a general-purpose validator.</summary>
public sealed class SchemaTests
{
    private static readonly JsonSchema PlanSchema = SchemaOf(PlanLanguage.File);

    public static TheoryData<string> PlanFiles => new(
        Directory.EnumerateFiles(Repository.Path("examples", "kestrel-bay"), "*.yaml")
            .Where(f => !f.EndsWith("quoted-prices.yaml", StringComparison.Ordinal))
            .Append(Repository.Path("data", "starter", "plan.yaml"))
            .Select(f => Path.GetRelativePath(Repository.Root, f)));

    [Theory]
    [MemberData(nameof(PlanFiles))]
    public void CleanPlans_AreValid(string file) =>
        Assert.True(IsValid(PlanSchema, File.ReadAllText(Repository.Path(file))), file);

    [Fact]
    public void Catalogues_AreValid()
    {
        var schema = SchemaOf(CatalogueLanguage.File);
        Assert.True(IsValid(schema, File.ReadAllText(Repository.Path("data", "catalogue", "devices.yaml"))));
        Assert.True(IsValid(schema, File.ReadAllText(Repository.Path("examples", "kestrel-bay", "quoted-prices.yaml"))));
    }

    [Theory]
    [InlineData("lanewright: 1\npolicy: { conection-loss: 0.3 dB }")]
    [InlineData("lanewright: 1\npolicy: { connection-loss: 0.3 }")]
    [InlineData("lanewright: 1\npolicy: { connection-grade: Q }")]
    [InlineData("lanewright: 1\nlinks: { a: { from: x, to: y, rate: 400 } }")]
    [InlineData("lanewright: 1\nlinks: { a: { from: x, rate: 400G } }")]
    [InlineData("devices: { a: { model: x } }")]
    public void WhatTheCheckerRefuses_TheSchemaRefuses(string plan)
    {
        var findings = new FindingSink();
        ShapeCheck.Check(Tree(plan), PlanLanguage.File, findings);
        Assert.NotEqual(0, findings.ErrorCount);
        Assert.False(IsValid(PlanSchema, plan));
    }

    private static JsonSchema SchemaOf(MapShape shape)
    {
        using var stream = new MemoryStream();
        SchemaJson.Write(shape, "test", stream);
        return JsonSchema.FromText(System.Text.Encoding.UTF8.GetString(stream.ToArray()));
    }

    private static bool IsValid(JsonSchema schema, string yaml) => schema.Evaluate(Element(PlanTwin.Json(Tree(yaml)))).IsValid;

    private static System.Text.Json.JsonElement Element(JsonNode? node) => System.Text.Json.JsonSerializer.SerializeToElement(node);

    private static Node Tree(string yaml) => YamlTree.Read(new SourceText("plan.yaml", yaml), new FindingSink())!;
}
