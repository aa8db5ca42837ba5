namespace Lanewright.Text;

/// <summary>Marks as text, and the weaker of two.</summary>
public static class Marks
{
    /// <summary>The weaker of two marks.</summary>
    public static Mark Weaker(Mark left, Mark right) => left > right ? left : right;

    /// <summary>The mark as it is written in data files and outputs.</summary>
    public static string Name(Mark mark) => mark switch
    {
        Mark.Seen => "seen",
        Mark.Derived => "derived",
        Mark.Memory => "memory",
        Mark.Weak => "weak",
        Mark.CommonPractice => "common practice",
        Mark.Invented => "invented",
        _ => throw new ArgumentOutOfRangeException(nameof(mark)),
    };

    /// <summary>Reads a mark; false when the text is none.</summary>
    public static bool TryRead(string text, out Mark mark)
    {
        foreach (var candidate in Enum.GetValues<Mark>())
        {
            mark = candidate;
            if (Name(candidate) == text) return true;
        }
        mark = default;
        return false;
    }
}
