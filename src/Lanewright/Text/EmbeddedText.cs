using System.Reflection;

namespace Lanewright.Text;

/// <summary>The texts that ship inside the library: standards, catalogue and rule pages.</summary>
public static class EmbeddedText
{
    private static readonly Assembly Home = typeof(EmbeddedText).Assembly;

    /// <summary>Reads one by its name, such as <c>data/standards/fibres.csv</c>.</summary>
    /// <exception cref="InvalidOperationException">There is no such text: a fault of this program.</exception>
    public static SourceText Read(string name)
    {
        using var stream = Home.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException("no embedded text " + name);
        using var reader = new StreamReader(stream, System.Text.Encoding.UTF8);
        return new SourceText(name, reader.ReadToEnd());
    }

    /// <summary>The names that begin in a certain way, in order.</summary>
    public static IReadOnlyList<string> Names(string prefix) =>
        [.. Home.GetManifestResourceNames().Where(n => n.StartsWith(prefix, StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
}
