using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>What waits in front of one receiver when many send to it at once.</summary>
/// <param name="Overload">What is sent over what the receiver takes; 1 is full.</param>
/// <param name="QueueBytes">Bytes that must be held when all bursts start together; 0 when the receiver keeps up.</param>
public sealed record IncastQueue(Share Overload, double QueueBytes)
{
    /// <summary>Computes it: while the bursts last, what arrives beyond what is taken piles up.</summary>
    /// <param name="senders">Senders, one or more.</param>
    /// <param name="senderRate">What each sends, above zero.</param>
    /// <param name="receiverRate">What the receiver takes, above zero.</param>
    /// <param name="burstBytes">Bytes each sends at a stretch.</param>
    public static IncastQueue Of(int senders, BitRate senderRate, BitRate receiverRate, double burstBytes)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(senders, 1);
        return Of(Enumerable.Repeat(senderRate, senders), receiverRate, burstBytes);
    }

    /// <summary>The same for senders of different rates: the queue is longest when one of the bursts ends, and slower senders go on
    /// after that.</summary>
    /// <param name="senderRates">What each sends, above zero; one or more.</param>
    /// <param name="receiverRate">What the receiver takes, above zero.</param>
    /// <param name="burstBytes">Bytes each sends at a stretch.</param>
    public static IncastQueue Of(IEnumerable<BitRate> senderRates, BitRate receiverRate, double burstBytes)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(receiverRate.BitsPerSecond, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(burstBytes);
        var rates = senderRates.Select(r => (double)r.BitsPerSecond).OrderDescending().ToList();
        ArgumentOutOfRangeException.ThrowIfLessThan(rates.Count, 1, nameof(senderRates));
        ArgumentOutOfRangeException.ThrowIfLessThan(rates[^1], 1, nameof(senderRates));
        var taken = (double)receiverRate.BitsPerSecond;
        var (sending, ended, most) = (rates.Sum(), 0, 0.0);
        foreach (var rate in rates)
        {
            // When this burst ends, the slower ones have sent as long, and the faster ones all they had.
            var arrived = burstBytes * (ended + (sending / rate));
            most = Math.Max(most, arrived - (burstBytes * taken / rate));
            sending -= rate;
            ended++;
        }
        return new IncastQueue(Share.From(rates.Sum() / taken), most);
    }
}
