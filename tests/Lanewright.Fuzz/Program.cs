using Lanewright.Fuzz;

// Throws torn and twisted texts at the readers for a bounded time: lanewright-fuzz [SECONDS] [FIRST-SEED].
var seconds = args.Length > 0 ? double.Parse(args[0], System.Globalization.CultureInfo.InvariantCulture) : 60;
var seed = args.Length > 1 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 1;
var end = DateTime.UtcNow.AddSeconds(seconds);
var texts = SeedTexts.All();
var runs = 0;
var slowest = (Seed: 0, Milliseconds: 0L);
while (DateTime.UtcNow < end)
{
    var watch = System.Diagnostics.Stopwatch.StartNew();
    if (TornText.Try(texts, seed) is { } fault)
    {
        Console.WriteLine($"seed {seed} brought the program down:");
        Console.WriteLine(fault);
        return 1;
    }
    if (watch.ElapsedMilliseconds > slowest.Milliseconds) slowest = (seed, watch.ElapsedMilliseconds);
    runs++;
    seed++;
}
Console.WriteLine(
    $"{runs} texts in {seconds} s, none brought the program down; "
    + $"slowest was seed {slowest.Seed} with {slowest.Milliseconds} ms");
return 0;
