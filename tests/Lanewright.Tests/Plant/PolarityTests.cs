using CsCheck;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;
using Lanewright.Model.Binding;
using Lanewright.Standards;

namespace Lanewright.Tests.Plant;

/// <summary>Chains of array cables followed position by position. Maps of types A, B and C: TIA-568.3 (ends of each map seen, inner
/// positions by the same rule). Composed results: own derivation, held against the rule of parity (derived).</summary>
public sealed class PolarityTests
{
    private static readonly PolarityTable Table = StandardsLibrary.Shipped.Polarity;

    [Theory]
    [InlineData("A", 12, "1 2 3 4 5 6 7 8 9 10 11 12")] // TIA-568.3
    [InlineData("B", 12, "12 11 10 9 8 7 6 5 4 3 2 1")]
    [InlineData("C", 12, "2 1 4 3 6 5 8 7 10 9 12 11")]
    [InlineData("B", 8, "8 7 6 5 4 3 2 1")]
    [InlineData("A", 16, "1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16")]
    [InlineData("C", 16, "2 1 4 3 6 5 8 7 10 9 12 11 14 13 16 15")]
    public void Cable_LeadsPositions(string type, int positions, string expected) =>
        Assert.Equal(expected, string.Join(' ', Answer(type, positions: positions).Map));

    [Theory]
    [InlineData("B", "A", Verdict.Pass)]
    [InlineData("A", "A", Verdict.Fail)]
    [InlineData("A,B,A", "A", Verdict.Pass)]
    [InlineData("B,B,B", "A", Verdict.Pass)]
    [InlineData("B,B,B", "B", Verdict.Pass)] // five reversals
    [InlineData("A,B,B", "A", Verdict.Fail)]
    [InlineData("A,A,B", "A", Verdict.Pass)]
    [InlineData("B,A,B", "A", Verdict.Fail)]
    [InlineData("A,A,A", "A", Verdict.Fail)]
    [InlineData("B,B,B,B", "A", Verdict.Fail)]
    [InlineData("B,B,B,A", "A", Verdict.Pass)]
    [InlineData("A,C,A", "A", Verdict.Fail)]
    [InlineData("A,C,B", "A", Verdict.Fail)] // receivers are reached, in another order
    public void Parallel_IsComposed(string chain, string adapters, Verdict expected)
    {
        foreach (var positions in new[] { 8, 12, 16 }) Assert.Equal(expected, Answer(chain, adapters, positions).Verdict);
    }

    [Fact]
    public void PairFlippedTrunk_ReachesReceiversInAnotherOrder()
    {
        var answer = Answer("A,C,B");
        Assert.True(answer.IsCrossed);
        Assert.Equal([2, 1, 4, 3], answer.LaneOrder);
    }

    [Theory]
    [InlineData("A-to-B,straight,A,straight,A-to-B", "A", Verdict.Fail)] // method A with the wrong cord
    [InlineData("A-to-B,straight,A,straight,A-to-A", "A", Verdict.Pass)]
    [InlineData("A-to-B,straight,C,straight,A-to-B", "A", Verdict.Pass)]
    [InlineData("A-to-A,straight,C,straight,A-to-B", "A", Verdict.Fail)]
    [InlineData("A-to-B,paired,B,paired,A-to-B", "A", Verdict.Pass)]
    [InlineData("A-to-B,paired,A,paired,A-to-B", "A", Verdict.Fail)]
    public void Duplex_IsComposed(string chain, string adapters, Verdict expected) =>
        Assert.Equal(expected, Answer(chain, adapters).Verdict);

    // Source: make-up of the methods, TIA-568.3 and a cabling page on trunk types (seen); U1 and U2, note on TIA-568.3-E (seen).
    [Theory]
    [InlineData("A", "1 2 3 4 5 6")]
    [InlineData("B", "1 2 3 4 5 6")]
    [InlineData("C", "1 2 3 4 5 6")]
    [InlineData("U1", "1 2 3 4 5 6")] // whatever the order inside: the transitions are alike (derived)
    [InlineData("U2", "1 2 3 4 5 6")]
    public void Method_Works(string method, string ports)
    {
        var (chain, adapter) = Table.MethodOf(method);
        var answer = Answer(string.Join(',', chain), adapter);
        Assert.Equal(Verdict.Pass, answer.Verdict);
        Assert.Equal(ports, string.Join(' ', answer.Pairs.Select(p => p.Far)));
    }

    [Fact]
    public void IdenticalTransitionsOverReversal_MeetFromTheOtherEnd()
    {
        var answer = Answer("straight,B,straight", "B");
        Assert.Equal("12 11 10 9 8 7 6 5 4 3 2 1", string.Join(' ', answer.Map));
        Assert.Equal([6, 5, 4, 3, 2, 1], answer.Pairs.Select(p => p.Far));
        Assert.All(answer.Pairs, p => Assert.True(p.IsCrossed));
        Assert.Equal("2 1 4 3 6 5 8 7 10 9 12 11", string.Join(' ', Answer("paired,B,paired").Map));
    }

    // Source: note on TIA-568.3-E (seen): key-up to key-up adapters do not take angled ends, so U2 does not suit them.
    [Fact]
    public void AngledEnds_DoNotMeetKeyUpToKeyUp()
    {
        Assert.Equal(Verdict.Pass, Answer("B,B,B", "A", isAngled: true).Verdict);
        Assert.Equal(Verdict.Fail, Answer("B,B,B", "B", isAngled: true).Verdict);
        var (chain, adapter) = Table.MethodOf("U2");
        Assert.Equal(Verdict.Fail, Answer(string.Join(',', chain), adapter, isAngled: true).Verdict);
    }

    [Fact]
    public void DuplexCordAlone_ExchangesItsTwoFibres()
    {
        // TIA-568.3 (seen): an A-to-B cord leads transmitter to receiver, an A-to-A cord does not.
        Assert.Equal("2 1", string.Join(' ', Answer("A-to-B", positions: 2).Map));
        Assert.Equal("1 2", string.Join(' ', Answer("A-to-A", positions: 2).Map));
    }

    [Fact]
    public void TwoRows_AreProvenOnlyWhereTheMapIsKnown()
    {
        Assert.Equal(Verdict.Unproven, Answer("B", positions: 24).Verdict);
        Assert.Empty(Answer("B", positions: 24).Map);
        Assert.Equal(24, Answer("A", positions: 24).Map.Length);
    }

    [Fact]
    public void Parity_IsWhatCompositionSays() => Gen.Select(
        Gen.OneOf(Gen.Const("A"), Gen.Const("B")).List[1, 9], Gen.OneOf(Gen.Const("A"), Gen.Const("B")).List[8],
        Gen.OneOf(Gen.Const(8), Gen.Const(12), Gen.Const(16))).Sample((cables, all, positions) =>
        {
            var adapters = all.Take(cables.Count - 1).ToList();
            var reversals = cables.Concat(adapters).Count(t => t == "B");
            var answer = Answer(string.Join(',', cables), adapters.Count == 0 ? "A" : string.Join(',', adapters), positions);
            Assert.Equal(reversals % 2 == 1 ? Verdict.Pass : Verdict.Fail, answer.Verdict);
        });

    [Fact]
    public void ChainAndItsReverse_PairTheSameEnds() => Gen.Select(
        Gen.OneOf(Gen.Const("A"), Gen.Const("B"), Gen.Const("C")).List[1, 9],
        Gen.OneOf(Gen.Const(8), Gen.Const(12), Gen.Const(16))).Sample((cables, positions) =>
        {
            var there = Answer(string.Join(',', cables), positions: positions);
            var back = Answer(string.Join(',', cables.AsEnumerable().Reverse()), positions: positions);
            Assert.All(Enumerable.Range(1, positions), p => Assert.Equal(p, back.Map[there.Map[p - 1] - 1]));
            Assert.Equal(there.Verdict, back.Verdict);
        });

    /// <summary>A fan-out: the lanes of an array part at a transition whose pairs are the outermost positions first. Own derivation: an
    /// even number of reversals leaves lane i on position i, which port i carries, and the A-to-B cord crosses it.</summary>
    [Theory]
    [InlineData("A,paired,A-to-B", "A", Verdict.Pass)]
    [InlineData("B,B,paired,A-to-B", "A", Verdict.Pass)]
    [InlineData("B,A,paired,A-to-B", "A", Verdict.Fail)]
    [InlineData("B,A,paired,A-to-A", "A", Verdict.Pass)]
    [InlineData("A,straight,A-to-B", "A", Verdict.Fail)] // both lanes of a port are sent
    [InlineData("B,B,U1,A-to-B", "A", Verdict.Unproven)] // which port is which was not read
    [InlineData("A-to-B,paired,A", "A", Verdict.Pass)]
    public void FanOut_LeadsEachLaneToItsOwnPort(string chain, string adapters, Verdict expected)
    {
        foreach (var positions in new[] { 8, 12, 16 })
        {
            var answer = Answer(chain, adapters, positions);
            Assert.Equal(expected, answer.Verdict);
            if (expected == Verdict.Pass) Assert.Equal(Enumerable.Range(1, positions == 16 ? 8 : 4), answer.LaneOrder);
        }
    }

    /// <summary>Cassettes in series: one swap of the pair for each A-to-B cord and for each link of method B or C, none for method A; odd
    /// totals light the link (own derivation, the rule of the cabling cases for duplex ports).</summary>
    [Fact]
    public void CassettesInSeries_FollowTheRuleOfSwaps() => Gen.Select(
        Gen.OneOf(Gen.Const("A"), Gen.Const("B"), Gen.Const("C"), Gen.Const("U1")).List[1, 5],
        Gen.OneOf(Gen.Const("A-to-B"), Gen.Const("A-to-A")).List[6]).Sample((methods, cords) =>
        {
            List<string> words = [cords[0]];
            List<string> adapters = [];
            for (var i = 0; i < methods.Count; i++)
            {
                var (chain, adapter) = Table.MethodOf(methods[i]);
                words.AddRange(chain.Skip(1).SkipLast(1));
                words.Add(cords[i + 1]);
                adapters.AddRange([adapter, adapter]);
            }
            var swaps = words.Count(w => w == "A-to-B") + methods.Count(m => m != "A");
            var answer = Answer(string.Join(',', words), string.Join(',', adapters));
            Assert.Equal(swaps % 2 == 1 ? Verdict.Pass : Verdict.Fail, answer.Verdict);
        });

    [Theory]
    [InlineData("D", "no part is called 'D'")]
    [InlineData("A,straight,A", "does not meet an array cable")]
    [InlineData("A-to-B,A", "does not meet an array cable")]
    [InlineData("straight,straight", "no array cable")]
    [InlineData("A,straight,A,straight", "does not meet an array cable")]
    [InlineData("A-to-B,straight,A,straight,straight,A,straight", "with a cord between them")]
    [InlineData("A-to-B,A-to-B,straight,A", "one duplex cord at most")]
    public void WayNobodyBuilds_IsRefused(string chain, string words)
    {
        Assert.False(FibreChainReader.TryRead(chain.Split(','), ["A"], Table, out _, out var problem));
        Assert.Contains(words, problem);
    }

    private static PolarityAnswer Answer(string chain, string adapters = "A", int positions = 12, bool isAngled = false)
    {
        Assert.True(FibreChainReader.TryRead(chain.Split(','), adapters.Split(','), Table, out var parts, out var problem), problem);
        return PolarityAnswer.Of(new FibreChain(positions, parts, isAngled), Table);
    }
}
