using System.Reflection;
using Lanewright.Deliverables.Drawings;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;
using Lanewright.Findings;
using Lanewright.Model.Binding;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Tests.Plant;

/// <summary>Worked cases of loss budgets, test limits, polarity and colours that no other test reads, each with its source; and the list of
/// all cases of a building with the test that reads each: tests/cases/cabling-plant.csv. None is left out.</summary>
public sealed class CablingCaseTests
{
    private static readonly StandardsLibrary Library = StandardsLibrary.Shipped;

    /// <summary>LB-01, LB-04. Source: network equipment hardware guide, sample of link loss and power margin over multimode fibre (seen):
    /// 2 km at 1.0 dB/km, five connectors of 0.5 dB, two splices of 0.5 dB, 0.5 dB for modes of higher order; 6 dB of 13 dB.</summary>
    [Fact]
    public void SampleOfAHardwareGuide_LosesSixOfThirteenDecibels()
    {
        var loss = Loss(Channel(2, 1.0, 5, 0.5, 2, 0.5, 0.5), "10GBASE-SR");
        Assert.Equal(6.0, loss, 0.01);
        Assert.Equal(7.0, 13 - loss, 0.01);
    }

    /// <summary>LB-07, LB-08. Source: IEEE 802.3 task-force reflector message on 40 km channel loss (seen): 17.25 dB of fibre at
    /// 1264.5 nm and 1.5 dB of connections are 18.75 dB.</summary>
    [Fact]
    public void FortyKilometresAtTheShortEnd_AreThoseOfTheMessage() =>
        Assert.Equal(18.75, Loss(Channel(40, 0.43125, 1, 1.5, 0, 0, 0), "40GBASE-LR4"), 0.005);

    /// <summary>LB-20, LB-21. Source: IEEE 802.3 clauses 124 and 151 (memory): fibre at 0.5 dB/km and the allowance of connections are what
    /// the types allow.</summary>
    [Theory]
    [InlineData("400GBASE-DR4", 0.5, 2.75, 3.0)]
    [InlineData("400GBASE-FR4", 2, 3.0, 4.0)]
    public void SingleModeAllowance_IsFibreAndConnections(string type, double kilometres, double connections, double expected)
    {
        Assert.Equal(expected, Loss(Channel(kilometres, 0.5, 1, connections, 0, 0, 0), type), 0.005);
        Assert.Equal(expected, Library.Interface(type)!.LossMax(Library.Fibre("OS2")!)!.Value.Value.Value, 0.005);
    }

    /// <summary>LB-12, LB-15. Source: component maxima of TIA-568.3 (seen in secondary texts), sums derived: 100 m of OM4 with two pairs of
    /// 0.75 dB at 3.0 dB/km; 500 m of indoor single-mode cable at 1.0 dB/km with four pairs and two splices of 0.3 dB.</summary>
    [Theory]
    [InlineData("OM4", 100, 0, 0, 1.8)]
    [InlineData("OS1a", 500, 2, 2, 4.1)]
    public void ComponentMaxima_MakeALimitOfTheirOwn(string fibre, double metres, int inner, int splices, double expected)
    {
        var limit = TestLimit.Of(Library, TestLimit.Maxima, Library.Fibre(fibre)!, Length.FromMetres(metres), inner, splices).Limit;
        Assert.Equal(expected, limit!.Value.Value, 0.005);
    }

    /// <summary>CO-01: public splicing course, checked quiz item (seen); CO-04 to CO-07: order of TIA-598 (seen), derived.</summary>
    [Theory]
    [InlineData(85, "black", "blue")]
    [InlineData(12, "blue", "aqua")]
    [InlineData(13, "orange", "blue")]
    [InlineData(24, "orange", "aqua")]
    [InlineData(144, "aqua", "aqua")]
    public void FibreInTubesOfTwelve_HasItsTwoColours(int fibre, string tube, string colour)
    {
        var (ofTube, ofFibre) = FibreColour.InTubes(fibre);
        Assert.Equal((tube, colour), (ofTube.Name, ofFibre.Name));
    }

    /// <summary>PO-rule and PO-par-01 to PO-par-13: own composition of the maps of TIA-568.3 (derived), said as the channel is
    /// built.</summary>
    [Theory]
    [InlineData("B", "A", Verdict.Pass)] // PO-par-01
    [InlineData("A", "A", Verdict.Fail)] // PO-par-02
    [InlineData("B,B,B", "A", Verdict.Pass)] // PO-par-04
    [InlineData("B,B,B", "B", Verdict.Pass)] // PO-par-05
    [InlineData("A,A,B", "A", Verdict.Pass)] // PO-par-07
    [InlineData("B,A,B", "A", Verdict.Fail)] // PO-par-09
    [InlineData("B,B,B,A", "A", Verdict.Pass)] // PO-par-11
    [InlineData("A,C,A", "A", Verdict.Fail)] // PO-par-13
    public void Channel_WorksAsComposed(string chain, string adapters, Verdict expected)
    {
        Assert.True(FibreChainReader.TryRead(chain.Split(','), [adapters], Library.Polarity, out var parts, out _));
        Assert.Equal(expected, PolarityAnswer.Of(new FibreChain(12, parts, IsAngled: false), Library.Polarity).Verdict);
    }

    /// <summary>Every row of the list names a test that there is.</summary>
    [Fact]
    public void List_NamesTestsThatThereAre()
    {
        var path = Repository.Path("tests", "cases", "cabling-plant.csv");
        var findings = new FindingSink();
        List<MapNode> rows = [.. CsvTree.Read(new SourceText(path, File.ReadAllText(path)), findings)];
        Assert.Equal(0, findings.ErrorCount);
        // All 117 cases of the reference notes, and our own beside them.
        Assert.Equal(117, rows.Select(r => r.Text("id")!).Where(id => !id.StartsWith("own-", StringComparison.Ordinal)).Distinct().Count());
        Assert.Equal(rows.Count, rows.Select(r => r.Text("id")).Distinct().Count());
        Assert.All(rows, row =>
        {
            var test = row.Text("test")!.Split('.');
            var type = typeof(CablingCaseTests).Assembly.GetTypes().Single(t => t.Name == test[0]);
            Assert.NotNull(type.GetMethod(test[1], BindingFlags.Public | BindingFlags.Instance));
            Assert.False(string.IsNullOrWhiteSpace(row.Text("source")));
        });
    }

    private static Channel Channel(
        double kilometres, double attenuation, int pairs, double pair, int splices, double splice, double reserve) => new()
        {
            Fibre = Library.Fibre("OS2")!,
            Length = Length.FromMetres(kilometres * 1000),
            Attenuation = new Known<Attenuation>(Attenuation.FromDecibelsPerKilometre(attenuation), Citation.OfPlan),
            Connections = pairs,
            ConnectionLoss = new Known<Decibels>(Decibels.From(pair), Citation.OfPlan),
            Splices = splices,
            SpliceLoss = new Known<Decibels>(Decibels.From(splice), Citation.OfPlan),
            AgeingMargin = Decibels.From(reserve),
        };

    private static double Loss(Channel channel, string type) => ChannelLoss.Of(channel, Library.Interface(type)!)!.Maximum.Value;
}
