using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Text;
using YamlDotNet.Core;

namespace Lanewright.Notation;

/// <summary>Reads a YAML text into a tree with places. Faults become findings; what can be read after a fault is read.</summary>
public static class YamlTree
{
    /// <summary>The tree, or null when nothing could be made of the text.</summary>
    public static Node? Read(SourceText source, FindingSink findings)
    {
        if (source.Content.Length > TreeBounds.MostCharacters)
        {
            findings.Add(NotationFindings.TextOutOfBounds, source.Span(0, 0),
                $"the file has more than {TreeBounds.MostCharacters / (1024 * 1024)} million characters; split it into several");
            return null;
        }
        var text = source.Content;
        var lastLine = 0;
        for (var attempt = 0; attempt < TreeBounds.MostSyntaxFaults; attempt++)
        {
            try
            {
                return new YamlTreeBuilder(source, text, findings).Build();
            }
            catch (YamlException fault)
            {
                var line = LineOf(source, fault);
                if (line <= lastLine) return null;
                lastLine = line;
                Report(source, fault, line, findings);
                // Reading goes on as if the faulty line were empty, so that one run shows every fault.
                text = WithoutLine(text, source, line);
            }
            catch (TreeRefused)
            {
                return null;
            }
        }
        return null;
    }

    /// <summary>The parser reports a tab in the indentation where the map begins that holds it; people look for the tab itself.</summary>
    private static int LineOf(SourceText source, YamlException fault)
    {
        var first = (int)Math.Clamp(fault.Start.Line, 1, source.LineCount);
        if (!fault.Message.Contains("tab as indentation", StringComparison.Ordinal)) return first;
        for (var line = first; line <= source.LineCount; line++)
        {
            var text = source.Line(line);
            if (text[..^text.TrimStart().Length].Contains('\t')) return line;
        }
        return first;
    }

    private static void Report(SourceText source, YamlException fault, int line, FindingSink findings)
    {
        var column = line == fault.Start.Line ? (int)Math.Max(1, fault.Start.Column) : 1;
        var start = Math.Min(source.StartOfLine(line) + column - 1, source.Content.Length);
        var reason = fault.InnerException?.Message ?? fault.Message;
        var tab = source.Line(line).Contains('\t') ? " (the line holds a tab; indent with spaces)" : "";
        findings.Add(NotationFindings.SyntaxFault, source.Span(start, 1), $"the text is not well-formed here: {Tidy(reason)}{tab}");
    }

    private static string Tidy(string reason)
    {
        var end = reason.IndexOf("): ", StringComparison.Ordinal);
        var text = end > 0 && reason.StartsWith('(') ? reason[(end + 3)..] : reason;
        return text.TrimEnd('.');
    }

    private static string WithoutLine(string text, SourceText source, int line)
    {
        var start = source.StartOfLine(line);
        var length = source.Line(line).Length;
        return string.Concat(text.AsSpan(0, start), new string(' ', length), text.AsSpan(start + length));
    }
}
