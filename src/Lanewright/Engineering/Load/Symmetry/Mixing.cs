namespace Lanewright.Engineering.Load.Symmetry;

/// <summary>Stirs numbers so that sums of stirred numbers tell multisets apart. A clash costs a finer division and never an error, as
/// every symmetry is verified.</summary>
internal static class Mixing
{
    /// <summary>Stirs one number: a multiplicative hash with shifts.</summary>
    public static ulong Stir(ulong number)
    {
        unchecked
        {
            var mixed = (number + Odd) * Odd;
            mixed = (mixed ^ (mixed >> Half)) * Odd;
            return mixed ^ (mixed >> Half);
        }
    }

    /// <summary>Stirs two numbers together.</summary>
    public static ulong Stir(ulong first, ulong second)
    {
        unchecked
        {
            return Stir((Stir(first) * Odd) + second);
        }
    }

    /// <summary>Two to the 64th over the golden ratio, made odd: its multiples spread evenly.</summary>
    private const ulong Odd = 0x9E3779B97F4A7C15;

    private const int Half = 32;
}
