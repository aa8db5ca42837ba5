using Lanewright.Quantities;

namespace Lanewright.Model.Catalogues;

/// <summary>One way to run a cage: as so many ports of such a rate, written <c>4x100G</c>.</summary>
/// <param name="Ways">Ports the cage becomes, from 1.</param>
/// <param name="Rate">Rate of each.</param>
public readonly record struct PortMode(int Ways, BitRate Rate)
{
    /// <summary>Ports in one cage that no real platform exceeds.</summary>
    public const int MostWays = 16;

    /// <summary>What the whole cage carries.</summary>
    public BitRate Total => Rate * Ways;

    /// <summary>Reads <c>4x100G</c>.</summary>
    public static bool TryRead(string text, out PortMode mode)
    {
        mode = default;
        var x = text.IndexOf('x', StringComparison.Ordinal);
        if (x <= 0 || !Numerals.TryWhole(text.AsSpan(0, x), out var ways) || ways is < 1 or > MostWays) return false;
        if (!UnitText.TryRead(text[(x + 1)..], UnitText.Rates, out var gigabits) || gigabits is <= 0 or > 1e5) return false;
        mode = new PortMode((int)ways, BitRate.FromGigabits(gigabits));
        return true;
    }

    /// <summary>The mode as it is written.</summary>
    public override string ToString() => Numerals.Whole(Ways) + "x" + Rate;
}
