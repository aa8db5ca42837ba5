using System.Net;

namespace Lanewright.Workbench.Door;

/// <summary>Bounds how often a passphrase can be guessed: so often a minute from one address, and so often from all together.</summary>
internal sealed class Guesses(TimeProvider clock)
{
    /// <summary>Guesses a minute from one address.</summary>
    public const int MostFromOne = 5;

    private const int MostFromAll = 60;
    private static readonly TimeSpan Window = TimeSpan.FromMinutes(1);

    private readonly Lock gate = new();
    private readonly List<(IPAddress From, DateTimeOffset At)> made = [];

    /// <summary>Counts a guess before it is looked at, so that guesses made side by side count as well. How long the address has to wait
    /// before it may guess; nothing when it may now.</summary>
    public TimeSpan Take(IPAddress from)
    {
        lock (gate)
        {
            var now = clock.GetUtcNow();
            made.RemoveAll(g => now - g.At >= Window);
            var own = made.Where(g => g.From.Equals(from)).Select(g => g.At).ToList();
            var oldest = own.Count >= MostFromOne ? own[0] : made.Count >= MostFromAll ? made[0].At : (DateTimeOffset?)null;
            if (oldest is { } at) return at + Window - now;
            made.Add((from, now));
            return TimeSpan.Zero;
        }
    }

    /// <summary>It was right: what was counted of the address is forgotten.</summary>
    public void Forget(IPAddress from)
    {
        lock (gate) made.RemoveAll(g => g.From.Equals(from));
    }
}
