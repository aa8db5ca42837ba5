namespace Lanewright.Deliverables.Tables;

/// <summary>A cell of a table: a text, a number, or nothing.</summary>
public readonly record struct Cell
{
    private readonly string? text;
    private readonly double number;

    private Cell(string? text, double number, bool isNumber)
    {
        this.text = text;
        this.number = number;
        IsNumber = isNumber;
    }

    /// <summary>An empty cell.</summary>
    public static Cell Empty { get; } = new("", 0, false);

    /// <summary>Whether it holds a number.</summary>
    public bool IsNumber { get; }

    /// <summary>The text; empty for a number.</summary>
    public string Text => text ?? "";

    /// <summary>The number; zero for a text.</summary>
    public double Number => number;

    /// <summary>A text.</summary>
    public static implicit operator Cell(string? text) => new(text ?? "", 0, false);

    /// <summary>A number.</summary>
    public static implicit operator Cell(double number) => new(null, number, true);

    /// <summary>A whole number.</summary>
    public static implicit operator Cell(long number) => new(null, number, true);

    /// <summary>A whole number.</summary>
    public static implicit operator Cell(int number) => new(null, number, true);

    /// <summary>A decimal number.</summary>
    public static implicit operator Cell(decimal number) => new(null, (double)number, true);
}
