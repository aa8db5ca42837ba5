using System.Text;

namespace Lanewright.Tests.Support;

/// <summary>Files that hold what came out when somebody last looked. <c>LANEWRIGHT_REWRITE=1</c> writes them anew, and the review reads
/// the
/// difference.</summary>
internal static class Golden
{
    private static readonly bool Rewrites = Environment.GetEnvironmentVariable("LANEWRIGHT_REWRITE") == "1";

    /// <summary>Holds a text against the file of a case.</summary>
    public static void Hold(string caseName, string file, string actual)
    {
        var path = Repository.Path("tests", "goldens", caseName, file);
        if (Rewrites)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, actual, new UTF8Encoding(false));
            return;
        }
        Assert.True(File.Exists(path), $"{path} is missing; LANEWRIGHT_REWRITE=1 writes it");
        var expected = File.ReadAllText(path);
        if (expected == actual) return;
        var (line, was, now) = FirstDifference(expected, actual);
        Assert.Fail($"{caseName}/{file} differs at line {line}:\n  was: {was}\n  now: {now}");
    }

    private static (int Line, string Was, string Now) FirstDifference(string expected, string actual)
    {
        var was = expected.Split('\n');
        var now = actual.Split('\n');
        for (var i = 0; i < Math.Max(was.Length, now.Length); i++)
        {
            var left = i < was.Length ? was[i] : "(nothing)";
            var right = i < now.Length ? now[i] : "(nothing)";
            if (left != right) return (i + 1, left, right);
        }
        return (0, "", "");
    }
}
