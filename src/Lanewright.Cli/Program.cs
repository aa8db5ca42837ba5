using Lanewright;
using Lanewright.Cli;
using Lanewright.Cli.Printing;
using Spectre.Console;

var c = Compilation.Of(new DiskFiles(), DiskFiles.PlanPath(args[0]));
AnsiConsole.Profile.Width = 400;
FindingPrinter.Print(AnsiConsole.Console, c.Findings);
if (c.Design is { } d)
    foreach (var ch in d.Choices)
    {
        Console.WriteLine($"class {ch.Class.Index} {ch.Class.Statement.Name} x{ch.Class.Count} {ch.Class.Shape} needed {ch.Class.Needed} -> {ch.Chosen?.Name} {ch.Chosen?.Verdict} {ch.Chosen?.Mark} {ch.Chosen?.Price} {ch.Chosen?.Power}");
        foreach (var s in ch.Candidates.Take(6)) Console.WriteLine($"    {s.Name}: {s.Verdict} {s.Price} {Lanewright.Engineering.Choice.LostBy.Reason(s, ch.Chosen, "CU")}");
    }
foreach (var p in c.Parts) Console.WriteLine($"{p.Item.Name} {p.Length} need {p.Needed} stock {p.FromStock} buy {p.ToBuy} {p.Total}");
return 0;
