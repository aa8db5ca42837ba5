using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Heat;
using Lanewright.Engineering.Load;
using Lanewright.Engineering.Pathways;
using Lanewright.Engineering.Space;
using Lanewright.Findings;
using Lanewright.Model.Binding;
using Lanewright.Model.Catalogues;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Tests.Cabling;

/// <summary>The cases of tests/cases/building.csv, each with its source there: pathways, bends, weights, lifting, light and pairs. The
/// cases of power, heat, spares and connector statistics stand in the tests of those disciplines.</summary>
public sealed class BuildingCaseTests
{
    private const double Inch = 25.4;

    private static readonly StandardsLibrary Limits = StandardsLibrary.Shipped;

    private static readonly Dictionary<string, Func<double>> Ours = new()
    {
        ["TR-12"] = () => ManualsArea(100, 0.30 * Inch, Limits.Facility("tray", "planned-fill").Value) / (Inch * Inch),
        ["TR-13"] = () => ManualsArea(100, 8, Limits.Facility("tray", "planned-fill").Value),
        ["TR-14"] = () => ManualsArea(100, 0.30 * Inch, Limits.Facility("duct", "most-fill-more").Value) / (Inch * Inch),
        // The page takes 40 % of a tray, as the limit of a duct is for three cables and more.
        ["TR-16"] = () => Fitting(12 * Inch, 4 * Inch, Math.Sqrt(0.5 * 4 / Math.PI) * Inch,
            Limits.Facility("duct", "most-fill-more").Value),
        ["TR-18"] = () => Fitting(300, 100, 3.0, Limits.Facility("tray", "most-fill").Value),
        ["TR-19"] = () => Fitting(300, 100, 7.9, Limits.Facility("tray", "planned-fill").Value),
        ["CD-04"] = () => JamRatio.MayJam(ThreeInADuct(3.0 * Inch, 1.0 * Inch), Limits) ? 1 : 0,
        ["GE-02"] = () => Limits.Practice("rack", "unit").Value * 48,
        ["GE-06"] = () => BendSpace.RadiusOf(Limits, Cord(6)).Value.Millimetres,
        ["GE-07"] = () => BendSpace.PullingRadiusOf(Limits, Cord(6)).Value.Millimetres,
        ["BL-A1-15-1550"] = () => Bend("G.657.A1", 15, 10, 1550),
        ["BL-A1-15-1625"] = () => Bend("G.657.A1", 15, 10, 1625),
        ["BL-A1-10-1550"] = () => Bend("G.657.A1", 10, 1, 1550),
        ["BL-A1-10-1625"] = () => Bend("G.657.A1", 10, 1, 1625),
        ["BL-A2-10-1550"] = () => Bend("G.657.A2", 10, 1, 1550),
        ["BL-A2-10-1625"] = () => Bend("G.657.A2", 10, 1, 1625),
        ["BL-A2-7.5-1625"] = () => Bend("G.657.A2", 7.5, 1, 1625),
        ["PW-12b"] = () => SiteOverhead.Of(950_000.0 / 620_000).Percent,
        ["RE-21"] = () => MeanLifeOfPair(0.00034),
        ["LS-01"] = () => PowerLevel.FromWatts(0.136).Dbm,
        ["LS-03"] = () => PowerLevel.FromDbm(1).OfAll(96).Dbm,
        ["LS-04a"] = () => PowerLevel.FromDbm(1).OfAll(128).Dbm,
        ["LS-04b"] = () => PowerLevel.FromDbm(1).OfAll(128) <= PowerLevel.FromDbm(21.34) ? 1 : 0,
        ["LI-01"] = () => UnitText.TryRead("51 lb", UnitText.Masses, out var kilograms) ? kilograms : double.NaN,
        ["LI-02"] = () => UnitText.TryRead("80 lb", UnitText.Masses, out var kilograms)
            ? LiftingIndex.Of(Mass.FromKilograms(kilograms), Limits).Value : double.NaN,
    };

    public static TheoryData<string> Cases => new(Rows().Select(r => r.Text("id")!));

    [Theory]
    [MemberData(nameof(Cases))]
    public void Case_IsMet(string id)
    {
        var row = Rows().Single(r => r.Text("id") == id);
        var (expected, tolerance) = (row.Real("expected")!.Value, row.Real("tolerance")!.Value);
        Assert.True(Math.Abs(Ours[id]() - expected) <= tolerance + 1e-9, $"{id}: {Ours[id]()} instead of {expected}");
    }

    [Fact]
    public void EveryCase_IsReadAndHasASource()
    {
        Assert.Equal(Ours.Keys.Order(), Rows().Select(r => r.Text("id")).Order());
        Assert.All(Rows(), r => Assert.False(string.IsNullOrEmpty(r.Text("source"))));
    }

    // Below all tabled radii, and in a category nobody tabled, there is no loss to state: never nothing.
    [Fact]
    public void BendBelowTheTable_IsUnknown()
    {
        Assert.Null(Macrobend.OfTurn(Limits, "G.657.A1", Length.FromMillimetres(9), Wavelength.FromNanometres(1550)));
        Assert.Null(Macrobend.OfTurn(Limits, "G.651", Length.FromMillimetres(30), Wavelength.FromNanometres(1550)));
        // Between two radii the smaller one counts.
        Assert.Equal(0.75, Bend("G.657.A1", 14, 1, 1310), 9);
    }

    private static double Bend(string category, double radius, int turns, double nanometres) =>
        turns
            * Macrobend.OfTurn(Limits, category, Length.FromMillimetres(radius), Wavelength.FromNanometres(nanometres))!.Value.Value.Value;

    /// <summary>Three cables alike in a duct.</summary>
    private static SegmentFill ThreeInADuct(double inside, double cable)
    {
        var duct = Pathways.TrayGrid.Tray("duct", 0, 0, 5, 0) with { IsDuct = true, Width = Length.FromMillimetres(inside) };
        var net = Pathways.TrayGrid.Net([duct], [Pathways.TrayGrid.Rack(0, 0, 0)]);
        return new SegmentFill(net, 0, 3, 3 * SegmentFill.Round(Length.FromMillimetres(cable)), 0);
    }

    // Source: outdoor loose-tube datasheets (seen): diameter in millimetres and kilograms a kilometre; the first of them is GE-10, 1.32
    // g/cm3. Where nobody states a weight the program takes no less than the heaviest of these by volume.
    [Theory]
    [InlineData(8.5, 75)]
    [InlineData(12.0, 110)]
    [InlineData(13.5, 135)]
    [InlineData(17.5, 230)]
    [InlineData(21.0, 350)]
    public void WeightNobodyStates_IsNoLessThanThatOfDatasheets(double diameter, double sheet)
    {
        var reckoned = CableWeight.AMetreOf(Cord(diameter), Limits)!.Value.Value * 1000;
        Assert.InRange(reckoned, sheet, sheet * (1.35 / 0.94));
        // The body of the cable is reckoned round: 75 g a metre of it are 1.32 g/cm3.
        if (diameter == 8.5) Assert.Equal(75 / 1.32, SegmentFill.Round(Length.FromMillimetres(diameter)), 75 / 1.32 * 0.005);
    }

    /// <summary>The same where the manual takes 0.785 for a quarter of pi: areas go with it.</summary>
    private static double ManualsArea(int cables, double diameter, double fill) =>
        AreaFor(cables, diameter, fill) * 0.785 / (Math.PI / 4);

    private static double AreaFor(int cables, double diameter, double fill) => Tray(1, 1, diameter, cables).WantedFor(fill);

    private static int Fitting(double width, double depth, double diameter, double fill) => Tray(width, depth, diameter, 1).CablesAt(fill);

    private static CableRoom Tray(double width, double depth, double diameter, int cables) => new(
        Length.FromMillimetres(width), Length.FromMillimetres(depth), Length.FromMillimetres(diameter), cables, Limits);

    private static CordModel Cord(double diameter) =>
        CatalogueBinder.Shipped.Find<CordModel>("cord-os2-mpo12")! with { Diameter = Length.FromMillimetres(diameter) };

    /// <summary>The integral of the share of time that at least one of two is up, by the trapezium rule: each is up after t hours with
    /// exp(-rate t).</summary>
    private static double MeanLifeOfPair(double rate)
    {
        const double step = 1;
        var sum = 0.0;
        for (var t = 0.0; t < 60 / rate; t += step)
            sum += step * (Up(t) + Up(t + step)) / 2;
        return sum;

        double Up(double hours) => Availability.AtLeast(2, 1, Share.From(Math.Exp(-rate * hours))).Value;
    }

    private static IReadOnlyList<MapNode> Rows() =>
        [.. CsvTree.Read(
            new SourceText("building.csv", File.ReadAllText(Repository.Path("tests", "cases", "building.csv"))), new FindingSink())];
}
