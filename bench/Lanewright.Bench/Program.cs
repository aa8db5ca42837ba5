using Lanewright.Bench;
using Lanewright.Quantities;

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
