using System.Collections.Immutable;
using CsCheck;
using Lanewright.Engineering.Fabrics;

namespace Lanewright.Tests.Fabrics;

/// <summary>Minimal sets of wishes that cannot be had together.</summary>
public sealed class ConflictSetTests
{
    [Fact]
    public void TwoUnknowns_HaveTheTwoConflictsWorkedOut()
    {
        // Case D09 of the fabric cases: x and y from 0 to 9; derived by brute force over all subsets.
        Func<int, int, bool>[] wishes =
            [(x, _) => x >= 5, (x, _) => x <= 3, (_, y) => y >= 5, (_, y) => y <= 4, (x, y) => x + y >= 2];
        var violated =
            from x in Enumerable.Range(0, 10)
            from y in Enumerable.Range(0, 10)
            select Bits(wishes.Select((w, i) => (i, w(x, y))).Where(w => !w.Item2).Select(w => w.i));
        Assert.Equal(["0 1", "2 3"], Words(ConflictSets.Of(wishes.Length, violated)));
    }

    [Fact]
    public void TwoTiersInLittleSpace_HaveTwoDistinctConflicts()
    {
        // As fabric theory describes for case D08: one request with the conflicts {hosts, radix, ratio, space} and {hosts, space, spread}.
        // Here: 14 hosts on switches of 8 ports (12 can be had), 1:1, five switches, uplinks equally over at least four spines.
        string[] names = ["hosts", "radix", "ratio", "space", "spread"];
        var violated =
            from radix in new[] { 8, 12 }
            from up in Enumerable.Range(1, radix - 1)
            from spines in Enumerable.Range(1, 8)
            from leaves in Enumerable.Range(1, spines * radix / up)
            let kept = new[]
            {
                leaves * (radix - up) >= 14, radix <= 8, radix - up <= up, leaves + spines <= 5, up % spines == 0 && spines >= 4,
            }
            select Bits(Enumerable.Range(0, names.Length).Where(w => !kept[w]));
        var sets = ConflictSets.Of(names.Length, violated).Select(set => string.Join(' ', set.Select(w => names[w])));
        Assert.Equal(["hosts space spread", "hosts radix ratio space"], sets);
    }

    [Fact]
    public void SomethingThatViolatesNothing_LeavesNoConflict() => Assert.Empty(ConflictSets.Of(3, [0b101, 0]));

    [Fact]
    public void RandomCandidates_GiveWhatAllSubsetsGive() =>
        Gen.Select(Gen.Int[1, 6], Gen.UInt[0, 63].Array[1, 12]).Sample((wishes, drawn) =>
        {
            var all = (1u << wishes) - 1;
            var violated = drawn.Select(d => d & all).ToList();
            // A set cannot be had when no candidate keeps all of it; it is minimal when each of its parts can be had.
            var impossible = Enumerable.Range(0, 1 << wishes).Select(s => (uint)s).Where(s => violated.All(v => (v & s) != 0)).ToHashSet();
            var minimal = impossible.Where(s => Members(s).All(m => !impossible.Contains(s & ~(1u << m))));
            Assert.Equal(minimal.Select(s => string.Join(' ', Members(s))).Order(), Words(ConflictSets.Of(wishes, violated)).Order());
        });

    [Fact]
    public void Order_IsBySizeThenByWishes()
    {
        var sets = Words(ConflictSets.Of(4, [0b0011, 0b0101, 0b1001]));
        Assert.Equal(["0", "1 2 3"], sets);
    }

    private static uint Bits(IEnumerable<int> members) => members.Aggregate(0u, (set, m) => set | (1u << m));

    private static IEnumerable<int> Members(uint set) => Enumerable.Range(0, 32).Where(m => (set & (1u << m)) != 0);

    private static IEnumerable<string> Words(ImmutableArray<ImmutableArray<int>> sets) => sets.Select(s => string.Join(' ', s));
}
