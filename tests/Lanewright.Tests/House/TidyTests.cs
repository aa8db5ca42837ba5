using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Lanewright.Tests.House;

/// <summary>The habits of docs/style.md that a machine can see.</summary>
public sealed partial class TidyTests
{
    private const int LongestFile = 400;
    private const int LongestMethod = 60;
    private const int LongestLine = 140;

    private static readonly string[] VagueNames = ["Manager", "Helper", "Util", "Utils", "Service", "Data", "Info"];

    /// <summary>Types that are open on purpose.</summary>
    private static readonly string[] OpenTypes = [];

    public static TheoryData<string> Folders => new("src", "tests", "bench");

    [Theory]
    [MemberData(nameof(Folders))]
    public void Files_StayShort(string folder) => AssertNone(Sources(folder)
        .Select(f => (f, File.ReadLines(f).Count()))
        .Where(f => f.Item2 > LongestFile)
        .Select(f => $"{Relative(f.f)} has {f.Item2} lines"));

    [Theory]
    [MemberData(nameof(Folders))]
    public void Lines_StayShort(string folder) => AssertNone(Sources(folder)
        .SelectMany(f => File.ReadLines(f).Select((line, i) => (f, i, line.Length)))
        .Where(l => l.Length > LongestLine)
        .Select(l => $"{Relative(l.f)}:{l.i + 1} has {l.Length} characters"));

    [Theory]
    [MemberData(nameof(Folders))]
    public void Methods_StayShort(string folder) => AssertNone(
        from tree in Trees(folder)
        from member in tree.GetRoot().DescendantNodes().OfType<MemberDeclarationSyntax>()
        where member is BaseMethodDeclarationSyntax
        let lines = LinesOf(tree, member)
        where lines > LongestMethod
        select $"{Relative(tree.FilePath)}: {Name(member)} has {lines} lines");

    [Theory]
    [MemberData(nameof(Folders))]
    public void Files_HoldOneTypeOfTheirOwnName(string folder) => AssertNone(
        from tree in Trees(folder)
        let types = tree.GetRoot().DescendantNodes().OfType<BaseTypeDeclarationSyntax>()
            .Where(t => t.Parent is not TypeDeclarationSyntax)
            .ToList()
        let fileName = Path.GetFileNameWithoutExtension(tree.FilePath).Split('.')[0]
        where types.Count > 1 || (types.Count == 1 && types[0].Identifier.Text != fileName)
        select $"{Relative(tree.FilePath)} holds {string.Join(", ", types.Select(t => t.Identifier.Text))}");

    [Theory]
    [MemberData(nameof(Folders))]
    public void Classes_AreSealedStaticOrAbstract(string folder) => AssertNone(
        from tree in Trees(folder)
        from type in tree.GetRoot().DescendantNodes().OfType<TypeDeclarationSyntax>()
        where type is ClassDeclarationSyntax or RecordDeclarationSyntax { ClassOrStructKeyword.RawKind: 0 or (int)SyntaxKind.ClassKeyword }
        let words = type.Modifiers.Select(m => m.Text).ToList()
        where !words.Contains("sealed") && !words.Contains("static") && !words.Contains("abstract")
        where !OpenTypes.Contains(type.Identifier.Text)
        select $"{Relative(tree.FilePath)}: {type.Identifier.Text} is open");

    [Theory]
    [MemberData(nameof(Folders))]
    public void Structs_AreReadonly(string folder) => AssertNone(
        from tree in Trees(folder)
        from type in tree.GetRoot().DescendantNodes().OfType<TypeDeclarationSyntax>()
        where type is StructDeclarationSyntax or RecordDeclarationSyntax { ClassOrStructKeyword.RawKind: (int)SyntaxKind.StructKeyword }
        where type.Modifiers.All(m => m.Text != "readonly")
        select $"{Relative(tree.FilePath)}: {type.Identifier.Text}");

    [Theory]
    [MemberData(nameof(Folders))]
    public void Names_SayWhatThingsAre(string folder) => AssertNone(
        from tree in Trees(folder)
        from type in tree.GetRoot().DescendantNodes().OfType<BaseTypeDeclarationSyntax>()
        where VagueNames.Any(v => type.Identifier.Text.EndsWith(v, StringComparison.Ordinal))
        select $"{Relative(tree.FilePath)}: {type.Identifier.Text}");

    [Fact]
    public void Library_ForgivesNoNulls()
    {
        // The compiler cannot follow a value that an earlier line made sure of; each place says so by being listed.
        var uses = Trees("src")
            .SelectMany(t => t.GetRoot().DescendantNodes().OfType<PostfixUnaryExpressionSyntax>()
                .Where(e => e.IsKind(SyntaxKind.SuppressNullableWarningExpression))
                .Select(_ => Relative(t.FilePath)))
            .ToList();
        Assert.True(uses.Count <= MostForgiven, $"{uses.Count} uses of '!': {string.Join(", ", uses.Distinct())}");
    }

    /// <summary>This number only ever goes down.</summary>
    private const int MostForgiven = 0;

    [Fact]
    public void Engineering_HasNoLiteralsThatBelongInRows() => AssertNone(
        from tree in Trees("src")
        where Relative(tree.FilePath).StartsWith("src/Lanewright/Engineering/", StringComparison.Ordinal)
        from literal in tree.GetRoot().DescendantNodes().OfType<LiteralExpressionSyntax>()
        where literal.IsKind(SyntaxKind.NumericLiteralExpression)
        let value = Convert.ToDouble(literal.Token.Value, System.Globalization.CultureInfo.InvariantCulture)
        where !SmallNumbers.Contains(value) && !AllowedLiterals.Contains((Path.GetFileName(tree.FilePath), value))
        select $"{Relative(tree.FilePath)}:{tree.GetLineSpan(literal.Span).StartLinePosition.Line + 1} {literal}");

    private static readonly double[] SmallNumbers = [0, 1, 2, 3, 4, 10];

    /// <summary>Numbers of mathematics and of unit conversion, never of a standard.</summary>
    private static readonly (string File, double Value)[] AllowedLiterals =
    [
        ("AmplifierPlaces.cs", 1e30), // more than any stretch that an amplifier makes up for
        ("Check.cs", 1e-9), // rounding of the last places
        ("ChannelLoss.cs", 1450), // between two bands, to tell them apart
        ("FibreLinkChecks.cs", 1e12), // seconds in picoseconds
        ("FibreLinkChecks.cs", 100), // per cent
        ("LinkLatency.cs", 1e9), // seconds in nanoseconds
        ("LinkLatency.cs", 299_792_458), // metres light travels in a second
        ("LossStatistics.cs", 3000), // steps of a numerical integral
        ("LossStatistics.cs", 1.880793608151251), // standard normal quantile of 97 %
        ("LossStatistics.cs", 0.5), // middle of a step
        ("LengthGrid.cs", 1e-9), // rounding of the last places
        ("SpareParts.cs", 1e-9), // rounding of the last places
        ("HostBuild.cs", 1e-9), // rounding of the last places
        ("FabricHall.cs", 0.5), // the middle of a rack
        ("NonlinearNoise.cs", 0.3), // exponent of noise in step, Poggiolini et al.
        ("NonlinearNoise.cs", 6), // in the same
        ("LineBook.cs", 16), // bound of a listing
        ("LineConflict.cs", 12), // bound of a listing
        ("GreyRung.cs", 40), // half a window in nanometres, to tell its wavelengths from others
        ("EnergyUse.cs", 1000), // watts in a kilowatt
        ("WishList.cs", 1_000_000), // a ratio no switch exceeds
        ("Loosenings.cs", 1_000_000), // steps of a ratio that count as one
        ("Loosenings.cs", 0.001), // steps of watts and kilograms that count as one
        ("LowerEnvelope.cs", 64), // bound of a search
        ("StepProof.cs", 3_000_000), // bound of a search
        ("StepProof.cs", 320), // bound of a search
        ("StepProof.cs", 0.75), // part of it for proofs
        ("BreakEvenTurns.cs", 8), // stretches told one by one
        ("BreakEvenTurns.cs", 0.04), // part of a range that is told by itself
        ("Relaxations.cs", 12), // bound of a search
        ("Relaxations.cs", 1000), // parts of a share that are told apart
        ("BreakEvens.cs", 0.25), // least multiple of prices that is looked at
        ("BreakEvens.cs", 1000), // parts of a ratio that are told apart
        ("BreakEvens.cs", 10_000), // parts of a share that are told apart
        ("BreakEvens.cs", 3000), // growth that is looked at in any case, in these parts
        ("ConflictSets.cs", 20), // bound of a listing
        ("TrunkFrontier.cs", 4_000_000), // bound of a table
        ("PanelPlaces.cs", 200_000), // bound of a search
        ("TrunkNeed.cs", 1e-9), // rounding of the last places
        ("TrunkWays.cs", 1e9), // farther than any cord
        ("PartsTally.cs", 5), // rank in a sort order
        ("RackRoute.cs", 2.0), // half of a height
        ("FibreLinkChecks.cs", 0.1), // the step printed limits are rounded to
        ("CopperChecks.cs", 0.01), // two tabled frequencies are the same
        ("BendSpace.cs", 26), // the gauge from which installers call copper thick
        ("SmallestChange.cs", 5), // rank in a sort order
        ("CageBundles.cs", -1),
        ("LinkChooser.cs", 64), // classes looked at before the first is chosen
        ("Mating.cs", 1e-9), // rounding of the last places
        ("DemandStudy.cs", 1e-9), // rounding of the last places
        ("HostSending.cs", 1e-9), // rounding of the last places
        ("PathLatency.cs", 30), // how much is searched, as a power of two
        ("PathBlock.cs", 16), // destinations a pass: a row of four vector registers
        ("PathCounts.cs", 1e100), // far below what a double holds
        ("LoadSolver.cs", 16), // shares of work
        ("HoseCrossings.cs", 16), // shares of work
        ("HoseCrossings.cs", 8),
        ("Transportation.cs", 40), // bits of a fraction
        ("HashCollisions.cs", 1000), // a bound on work
        ("Mixing.cs", 0x9E3779B97F4A7C15), // a hash: two to the 64th over the golden ratio
        ("Mixing.cs", 32), // half of 64 bits
        ("AirStream.cs", 3600), // seconds in an hour
        ("AirStream.cs", 3.412142), // British thermal units an hour in a watt
        ("PathwayJoins.cs", 1e-3), // metres below which points are one
        ("WayNetMaker.cs", 1000), // millimetres in a metre
        ("ShortestWays.cs", 4_000_000), // a bound on memory
        ("SegmentFill.cs", 1e-9), // rounding of the last places
        ("SectionPacking.cs", 1e-6), // rounding of the last places
        ("SectionBundle.cs", 600), // cables drawn one by one at most
        ("TwoSideSearch.cs", 500), // bounds of work
        ("TwoSideSearch.cs", 20_000),
        ("CableWeight.cs", 1000), // metres in a kilometre
        ("CableWeight.cs", 1e-6), // square millimetres in a square metre
        ("Macrobend.cs", 1550), // the wavelength that limits are tabled at
        ("BendLoss.cs", 1310), // where no lane states a wavelength
        ("Assignment.cs", 1e15), // beyond every sum of money
        ("GroupPlacement.cs", 0.005), // half of the smallest coin
        ("RowOrder.cs", 0.005), // half of the smallest coin
        ("RowPlacer.cs", 24), // a bound of work
        ("GroupPlacer.cs", 1_000_000), // a bound of work
        ("GroupPlacer.cs", 200), // bound of a search
        ("GroupPlacer.cs", 1e-9), // rounding of the last places
        ("StripLoads.cs", 0.999999), // below a limit by more than rounding
        ("PhaseSearch.cs", 5000), // a bound of work
        ("PhaseSearch.cs", 1e-9), // rounding of the last places
        ("AirStream.cs", 60), // minutes in an hour
        ("AirStream.cs", 0.028316846592), // cubic metres in a cubic foot
        ("QuadraticAssignment.cs", 100_000_000), // a bound of work
        ("QuadraticAssignment.cs", 1e-6), // rounding of the last places
        ("PlacementCost.cs", 100), // hundredths in a unit of money
        ("FloorPressure.cs", 1000), // pascals in a kilopascal
        ("FabricStudy.cs", 6_000), // bounds on work
        ("FabricStudy.cs", 4_000),
        ("FabricStudy.cs", 100_000),
        ("SizingEffort.cs", 1_000_000),
        ("SizingEffort.cs", 4_000_000),
        ("WaySearch.cs", 2_000), // bound of a search
        ("LeafChooser.cs", 2_000), // choices tried before a solver is begun
        ("SizingEffort.cs", 50),
        ("SizingEffort.cs", 200),
        ("SizingEffort.cs", 200_000),
        ("SizingEffort.cs", 8),
        ("SizingEffort.cs", 20_000),
        ("Incumbent.cs", 1.25), // how deep to search
        ("Incumbent.cs", 1.5),
        ("Incumbent.cs", 8),
        ("MixedLeaves.cs", 12), // bounds on work
        ("MixedLeaves.cs", 60),
        ("MixedLeaves.cs", 0.005), // a gap not worth closing
        ("PodOffers.cs", 64), // a bound on work
        ("LeafSpineSearch.cs", 1e-9), // rounding of the last places
        ("PodFloors.cs", 1e-9), // rounding of the last places
        ("Orbits.cs", 20_000), // bounds on work
        ("Orbits.cs", 100_000_000),
        ("HoseProblem.cs", 4e9), // a bound on work
        ("IdealSplit.cs", 10_000), // a bound on work
        ("FlowProgram.cs", 4_000_000), // a bound on work
        ("FlowProgram.cs", 1e-9), // rounding of the last places
        ("HoseFailures.cs", 6_000_000), // bound on work
        ("IdealWorstCase.cs", 1e-9), // rounding of the last places
        ("PairClasses.cs", 16_000_000), // bounds on work
        ("PairClasses.cs", 1_000_000_000),
        ("LinkWorstCase.cs", 1e-9), // rounding of the last places
        ("FailurePairs.cs", 1e-9), // rounding of the last places
        ("FailurePairs.cs", 0.025), // outside a 95 % interval, a side
        ("Bisection.cs", 12), // bounds on work
        ("Bisection.cs", 64),
        ("BisectionSearch.cs", 400_000),
        ("BisectionSearch.cs", 100_000_000),
        ("BisectionFloor.cs", 12),
        ("BisectionFloor.cs", 128),
        ("Divisions.cs", 24),
        ("Divisions.cs", 600),
        ("Divisions.cs", 20_000_000),
        ("Bisection.cs", 1e-9), // rounding of the last places
        ("AmplifierNoise.cs", 6.62607015e-34), // the quantum of action
        ("CodeMargin.cs", 1e-100), // fewer errors than anybody can wait for
        ("CodeMargin.cs", 0.49), // errors with which there is no signal left
        ("ReedSolomonCode.cs", 100), // halvings of a search
        ("ReedSolomonCode.cs", 1e-30), // where it begins
        ("ReedSolomonCode.cs", 1e-6), // below it a power is its first term
        ("CoherentChecks.cs", 1e-9), // rounding of the last places
        ("LineWords.cs", 1000), // metres in a kilometre
        ("LineWords.cs", 6), // places of a share of time
        ("LineJoint.cs", 1e-6), // kilometres by which sums of lengths may differ
        ("NonlinearNoise.cs", 16.0), // factors of the model's integrals
        ("NonlinearNoise.cs", 27),
        ("NonlinearNoise.cs", 5.0),
        ("NonlinearNoise.cs", 6),
        ("CombShape.cs", 0.2), // what amplifiers are set in
        ("CoherentTrial.cs", 30), // bounds of a search
        ("CoherentTrial.cs", 14),
        ("CoherentTrial.cs", 21),
        ("CoherentTrial.cs", 13),
        ("LineBook.cs", 1e-9), // a cost below any that is stated
        ("CoherentTrial.cs", 100), // what a search weighs a lost decibel with
        ("GroupDelay.cs", 60), // bound of a search
        ("GlassSpan.cs", 1550), // the wavelength that fibre values hold at
        ("GlassSpan.cs", 1e9), // nanometres in a metre
        ("GlassSpan.cs", 1000), // metres in a kilometre
        ("ChannelPlan.cs", 1e-9), // rounding of the last places
        ("CoherentLine.cs", 1e9), // nanoseconds in a second
        ("CoherentLine.cs", 250), // decibels after which no light is left
        ("CoherentLine.cs", 0.05), // half of the step that launches are set in
        ("LineLadder.cs", 120), // bound of a search
        ("LineMargins.cs", 1000), // kilometres that cuts are counted on
        ("LineChange.cs", 0.005), // a gain not worth telling
        ("LineSweep.cs", 32), // steps of a chart
        ("LineSweep.cs", 8),
        ("LineSweep.cs", 16),
        ("Earth.cs", 180), // degrees in half a turn
        ("RouteGraph.cs", 20_000), // a bound on work
        ("RouteAvailability.cs", 60), // minutes in an hour
        ("RouteAvailability.cs", 1000), // kilometres that cuts are counted on
    ];

    [Fact]
    public void Notation_KnowsNoWordOfTheTrade()
    {
        var faults = Sources("src").Where(f => Relative(f).StartsWith("src/Lanewright/Notation/", StringComparison.Ordinal))
            .SelectMany(f => TradeWords().Matches(File.ReadAllText(f)).Select(m => $"{Relative(f)}: {m.Value}"));
        AssertNone(faults);
    }

    [GeneratedRegex(@"\b(fibre|module|cage|rack|cable|transceiver|breakout)s?\b", RegexOptions.IgnoreCase)]
    private static partial Regex TradeWords();

    private static void AssertNone(IEnumerable<string> faults) => Assert.Empty(faults.Take(20));

    private static IEnumerable<string> Sources(string folder)
    {
        var root = Repository.Path(folder);
        return !Directory.Exists(root)
            ? []
            : Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories)
                .Where(f => !f.Contains("/obj/", StringComparison.Ordinal) && !f.Contains("/bin/", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal);
    }

    private static IEnumerable<SyntaxTree> Trees(string folder) =>
        Sources(folder).Select(f => CSharpSyntaxTree.ParseText(File.ReadAllText(f), path: f));

    private static int LinesOf(SyntaxTree tree, SyntaxNode node)
    {
        var span = tree.GetLineSpan(node.Span);
        return span.EndLinePosition.Line - span.StartLinePosition.Line + 1;
    }

    private static string Name(MemberDeclarationSyntax member) => member switch
    {
        MethodDeclarationSyntax method => method.Identifier.Text,
        ConstructorDeclarationSyntax constructor => constructor.Identifier.Text,
        _ => member.Kind().ToString(),
    };

    private static string Relative(string path) => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/');
}
