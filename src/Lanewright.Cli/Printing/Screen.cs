using Spectre.Console;

namespace Lanewright.Cli.Printing;

/// <summary>Where the program prints: results to standard output, progress to standard error and only on a terminal.</summary>
internal static class Screen
{
    /// <summary>Wide enough for any table that goes into a pipe or a file.</summary>
    private const int WidthInPipe = 220;

    /// <summary>For tables: as wide as the terminal.</summary>
    public static IAnsiConsole Tables { get; } = Create(Console.IsOutputRedirected ? WidthInPipe : null);

    /// <summary>For lines that are never broken.</summary>
    public static IAnsiConsole Lines { get; } = Create(int.MaxValue / 4);

    /// <summary>Prints one line, however long.</summary>
    public static void Line(string text) => Console.Out.WriteLine(Printable.Of(text));

    /// <summary>Runs long work and shows what it is at on a terminal; silent in a pipe.</summary>
    public static T WithProgress<T>(Func<Action<string>, T> work)
    {
        if (Console.IsErrorRedirected || Console.IsOutputRedirected) return work(_ => { });
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Error) });
        return console.Status().Start("starting", status => work(step => status.Status(Markup.Escape(step))));
    }

    /// <summary>Prints a table of texts.</summary>
    public static void Print(IReadOnlyList<string> header, IEnumerable<IReadOnlyList<string>> rows)
    {
        var table = new Table { Border = TableBorder.Simple };
        var bold = new Style(decoration: Decoration.Bold);
        foreach (var name in header) table.AddColumn(new TableColumn(new Spectre.Console.Text(name, bold)));
        foreach (var row in rows) table.AddRow(row.Select(cell => new Spectre.Console.Text(Printable.Of(cell))));
        Tables.Write(table);
    }

    /// <summary>Writes a document to standard output.</summary>
    public static void Document(Action<Stream> write)
    {
        using var stream = Console.OpenStandardOutput();
        using var buffered = new BufferedStream(stream, 1 << 16);
        write(buffered);
    }

    private static IAnsiConsole Create(int? width)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(Console.Out) });
        if (width is { } columns) console.Profile.Width = columns;
        return console;
    }
}
