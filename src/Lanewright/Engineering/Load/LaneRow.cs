using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Lanewright.Engineering.Load;

/// <summary>One number for each lane of a block, held in vector registers. Rows are summed in one fixed order, so that a sum has the same
/// bytes on every machine.</summary>
internal readonly struct LaneRow
{
    private static readonly Vector256<ulong> BitsA = BitsFrom(0);
    private static readonly Vector256<ulong> BitsB = BitsFrom(1);
    private static readonly Vector256<ulong> BitsC = BitsFrom(2);
    private static readonly Vector256<ulong> BitsD = BitsFrom(3);

    private readonly Vector256<double> a;
    private readonly Vector256<double> b;
    private readonly Vector256<double> c;
    private readonly Vector256<double> d;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private LaneRow(Vector256<double> a, Vector256<double> b, Vector256<double> c, Vector256<double> d)
    {
        this.a = a;
        this.b = b;
        this.c = c;
        this.d = d;
    }

    private static int Step => Vector256<double>.Count;

    /// <summary>The row of a node.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LaneRow Load(double[] rows, int node)
    {
        ref var row = ref rows[node * PathBlock.Lanes];
        return new LaneRow(
            Vector256.LoadUnsafe(ref row),
            Vector256.LoadUnsafe(ref row, (nuint)Step),
            Vector256.LoadUnsafe(ref row, (nuint)(2 * Step)),
            Vector256.LoadUnsafe(ref row, (nuint)(3 * Step)));
    }

    /// <summary>The same number in every lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LaneRow All(double number)
    {
        var all = Vector256.Create(number);
        return new LaneRow(all, all, all, all);
    }

    /// <summary>Lane by lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LaneRow operator +(LaneRow left, LaneRow right) =>
        new(left.a + right.a, left.b + right.b, left.c + right.c, left.d + right.d);

    /// <summary>Lane by lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LaneRow operator *(LaneRow left, LaneRow right) =>
        new(left.a * right.a, left.b * right.b, left.c * right.c, left.d * right.d);

    /// <summary>Lane by lane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static LaneRow operator /(LaneRow left, LaneRow right) =>
        new(left.a / right.a, left.b / right.b, left.c / right.c, left.d / right.d);

    /// <summary>The row with zeros in all lanes but these, whatever stood there.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public LaneRow Keep(uint lanes)
    {
        var all = Vector256.Create((ulong)lanes);
        return new LaneRow(Keep(a, all & BitsA), Keep(b, all & BitsB), Keep(c, all & BitsC), Keep(d, all & BitsD));
    }

    /// <summary>Puts the row in the place of a node's.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(double[] rows, int node)
    {
        ref var row = ref rows[node * PathBlock.Lanes];
        a.StoreUnsafe(ref row);
        b.StoreUnsafe(ref row, (nuint)Step);
        c.StoreUnsafe(ref row, (nuint)(2 * Step));
        d.StoreUnsafe(ref row, (nuint)(3 * Step));
    }

    /// <summary>The sum over all lanes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Sum()
    {
        var sum = a + b + (c + d);
        return sum.GetElement(0) + sum.GetElement(1) + (sum.GetElement(2) + sum.GetElement(3));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Keep(Vector256<double> numbers, Vector256<ulong> wanted) =>
        Vector256.AndNot(numbers.AsUInt64(), Vector256.Equals(wanted, Vector256<ulong>.Zero)).AsDouble();

    private static Vector256<ulong> BitsFrom(int step)
    {
        var first = 1UL << (step * Step);
        return Vector256.Create(first, first << 1, first << 2, first << 3);
    }
}
