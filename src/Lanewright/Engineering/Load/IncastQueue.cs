using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>What waits in front of one receiver when many send to it at once.</summary>
/// <param name="Overload">What is sent over what the receiver takes; 1 is full.</param>
/// <param name="QueueBytes">Bytes that must be held when all bursts start together; 0 when the receiver keeps up.</param>
public sealed record IncastQueue(Share Overload, double QueueBytes)
{
    /// <summary>Computes it.</summary>
    /// <param name="senders">Senders, one or more.</param>
    /// <param name="senderRate">What each sends.</param>
    /// <param name="receiverRate">What the receiver takes.</param>
    /// <param name="burstBytes">Bytes each sends at a stretch.</param>
    public static IncastQueue Of(int senders, BitRate senderRate, BitRate receiverRate, double burstBytes) => throw new NotSupportedException();
}
