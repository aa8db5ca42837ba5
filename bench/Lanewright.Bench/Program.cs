using Lanewright.Bench;
using Lanewright.Quantities;

// "fabric" benches the load engine alone: three-tier fat trees of these many ports a switch, or those named.
if (args is ["fabric", ..])
{
    var radices = args.Skip(1).Select(a => Numerals.TryWhole(a, out var k) ? (int)k : 0).Where(k => k > 0).ToList();
    FabricBench.Run(radices.Count > 0 ? radices : [32, 48, 64]);
    return;
}
// "size" benches the question what to buy: for these many hosts, or those named.
if (args is ["size", ..])
{
    var hosts = args.Skip(1).Select(a => Numerals.TryWhole(a, out var n) ? (int)n : 0).Where(n => n > 0).ToList();
    SizeBench.Run(hosts.Count > 0 ? hosts : [2_500, 5_000, 10_000, 20_000]);
    return;
}
// "ways" benches the ways of these many cables along trays, or of those named.
if (args is ["ways", ..])
{
    var cables = args.Skip(1).Select(a => Numerals.TryWhole(a, out var n) ? (int)n : 0).Where(n => n > 0).ToList();
    WaysBench.Run(cables.Count > 0 ? cables : [25_000, 100_000, 400_000]);
    return;
}
// "lines" benches lines between sites alone.
if (args is ["lines"])
{
    LineBench.Run();
    return;
}
// "edit" benches a compilation after an edit of one line, for plans of these many links, or of those named.
if (args is ["edit", ..])
{
    var links = args.Skip(1).Select(a => Numerals.TryWhole(a, out var n) ? (int)n : 0).Where(n => n > 0).ToList();
    if (links.Count == 0) links = [10_000, 100_000, 200_000];
    if (!args.Contains("seen")) EditBench.Run(links);
    SeenBench.Run(links);
    return;
}
// Plans of these many links, or those named on the command line.
var sizes = args.Where(a => Numerals.TryWhole(a, out _)).Select(a =>
{
    Numerals.TryWhole(a, out var size);
    return (int)size;
}).ToList();
if (sizes.Count == 0) sizes = [10_000, 100_000, 1_000_000];

Console.WriteLine($"{Environment.ProcessorCount} cores, .NET {Environment.Version}, best of several runs each");
ReadingBench.Run();
CheckBench.Run(sizes);
ClassesBench.Run();
DocumentsBench.Run(Math.Min(100_000, sizes.Max()));
FabricBench.Run([32, 48, 64]);
SizeBench.Run([2_500, 5_000, 10_000, 20_000]);
WaysBench.Run([25_000, 100_000, 400_000]);
LineBench.Run();
