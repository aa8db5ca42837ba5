using System.Text;
using Lanewright.Deliverables;
using Lanewright.Engineering.Lines;
using Lanewright.Findings;
using Lanewright.Notation;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Tests.Lines;

/// <summary>Graphs of places become plans that are read without an error.</summary>
public sealed class GraphPlanTests
{
    private const string Graph = """
        <?xml version="1.0" encoding="utf-8"?><graphml xmlns="http://graphml.graphdrawing.org/xmlns">
          <key attr.name="label" attr.type="string" for="node" id="d1" /><key attr.name="Longitude" for="node" id="d2" />
          <key attr.name="Latitude" for="node" id="d3" /><key attr.name="LinkLabel" for="edge" id="d4" />
          <graph edgedefault="undirected">
            <node id="0"><data key="d1">North: End</data><data key="d2">0.0</data><data key="d3">1.0</data></node>
            <node id="1"><data key="d1">yes</data><data key="d2">0.0</data><data key="d3">0.0</data></node>
            <node id="2"><data key="d1">yes</data><data key="d2">1.0</data><data key="d3">0.0</data></node>
            <node id="3"><data key="d1">Nowhere</data></node>
            <edge source="0" target="1"><data key="d4">10 Gbps</data></edge><edge source="1" target="2" /><edge source="2" target="3" />
            <edge source="2" target="2" /><edge source="2" target="9" />
          </graph></graphml>
        """;

    [Fact]
    public void Graph_BecomesAPlanWithoutErrors()
    {
        var plan = Plan(Graph);
        var judged = PlanBlock.Compile(plan);
        Assert.DoesNotContain(judged.Findings, f => f.Severity == Severity.Error);
        Assert.Equal(["North: End", "Nowhere", "yes", "yes 2"], judged.Plan!.Building.Sites.Select(s => s.Name));
        // A degree of a great circle is 111.195 km on a sphere of 6371 km (IUGG mean radius, recalled), here times 1.3.
        Assert.All(judged.Plan.Spans, s => Assert.Equal(111.195 * 1.3, s.Length.Kilometres, 0.1));
        Assert.Equal(2, judged.Plan.Spans.Length);
        Assert.Contains("how far apart they are is not known", plan, StringComparison.Ordinal);
    }

    // Source: great-circle distance between two airports 3983 km apart, the textbook example of the haversine (memory): 36.12 N 86.67 W
    // and 33.94 N 118.40 W are 2886.4 km apart on a sphere of 6371 km.
    [Fact]
    public void Distance_IsThatOfTheTextbook() => Assert.Equal(
        2886.4, Earth.Between(StandardsLibrary.Shipped, (-86.67, 36.12), (-118.40, 33.94)).Kilometres, 0.5);

    // Azimuthal equidistant: distances from the middle are those of the globe, and others are at most a few hundredths too long, also
    // over the meridian where degrees begin anew.
    [Theory]
    [InlineData(10, 50)]
    [InlineData(-95, 38)]
    [InlineData(180, -20)]
    public void Map_KeepsDistances(double longitude, double latitude)
    {
        var standards = StandardsLibrary.Shipped;
        (double X, double Y)[] points = [.. Enumerable.Range(0, 12).Select(i =>
            (Wrapped(longitude + (20 * Math.Sin(i * 2.4))), latitude + (14 * Math.Cos(i * 1.7))))];
        var middle = Earth.Middle(points);
        Assert.Equal(0, Earth.Between(standards, middle, (longitude, latitude)).Kilometres, 900.0);
        var flat = points.Select(p => Earth.Position(standards, middle, p)).ToList();
        for (var i = 0; i < points.Length; i++)
        {
            Assert.Equal(Earth.Between(standards, middle, points[i]).Kilometres, Far(flat[i], default), 1e-6);
            for (var j = 0; j < i; j++)
                Assert.InRange(Far(flat[i], flat[j]) / Earth.Between(standards, points[i], points[j]).Kilometres, 0.9999, 1.03);
        }

        static double Wrapped(double degrees) => degrees > 180 ? degrees - 360 : degrees;

        static double Far((Quantities.Length East, Quantities.Length North) a, (Quantities.Length East, Quantities.Length North) b) =>
            Math.Sqrt(Math.Pow((a.East - b.East).Kilometres, 2) + Math.Pow((a.North - b.North).Kilometres, 2));
    }

    [Theory]
    [InlineData("")]
    [InlineData("<graphml>")]
    [InlineData("<graphml/>")]
    [InlineData("<!DOCTYPE a [<!ENTITY b \"c\">]><graphml><node id=\"&b;\"/></graphml>")]
    public void WhatIsNoGraph_IsRefusedInWords(string text)
    {
        Assert.Null(GraphText.Read(new SourceText("g.graphml", text), out var problem));
        Assert.NotEmpty(problem);
    }

    private static string Plan(string text)
    {
        var graph = GraphText.Read(new SourceText("g.graphml", text), out var problem);
        Assert.True(graph is not null, problem);
        using var stream = new MemoryStream();
        PlanFromGraph.Write(graph, StandardsLibrary.Shipped, stream);
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
