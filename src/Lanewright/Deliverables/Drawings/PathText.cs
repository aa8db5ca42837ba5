using System.Runtime.CompilerServices;
using System.Text;

namespace Lanewright.Deliverables.Drawings;

/// <summary>Builds the data of a path from an interpolated text; its numbers are written as drawings write them.</summary>
[InterpolatedStringHandler]
internal readonly ref struct PathText
{
    private readonly StringBuilder text;

    /// <summary>The data of a path.</summary>
    public static string Of(PathText path) => path.ToString();

    /// <summary>Begins.</summary>
    public PathText(int literals, int numbers) => text = new StringBuilder(literals + (numbers * 7));

    /// <summary>Adds letters and blanks.</summary>
    public void AppendLiteral(string letters) => text.Append(letters);

    /// <summary>Adds a number.</summary>
    public void AppendFormatted(double number) => text.Append(Canvas.N(number));

    /// <inheritdoc/>
    public override string ToString() => text.ToString();
}
