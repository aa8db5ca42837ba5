namespace Lanewright.Engineering.Load;

/// <summary>Numbers that look drawn and depend on a seed alone: a counter stirred by multiplications and shifts.</summary>
internal sealed class SeededDraws(ulong seed)
{
    private ulong drawn;

    /// <summary>A number from 0 up to below a limit, each as likely as the other.</summary>
    public long Below(long limit)
    {
        // What lies beyond the last whole multiple of the limit would favour low numbers, and is drawn again.
        var end = ulong.MaxValue - (ulong.MaxValue % (ulong)limit);
        var number = Next();
        while (number >= end) number = Next();
        return (long)(number % (ulong)limit);
    }

    private ulong Next() => Symmetry.Mixing.Stir(Symmetry.Mixing.Stir(seed, drawn++));
}
