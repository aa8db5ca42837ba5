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
        ArgumentOutOfRangeException.ThrowIfLessThan(senderRate.BitsPerSecond, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(receiverRate.BitsPerSecond, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(burstBytes);
        var ratio = receiverRate.BitsPerSecond / (double)senderRate.BitsPerSecond;
        return new IncastQueue(Share.From(senders / ratio), Math.Max(0, (senders * burstBytes) - (ratio * burstBytes)));
    }
}
