using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>Delay along a path, and what it is made of.</summary>
/// <param name="Links">Links on the path.</param>
/// <param name="Switches">Switches passed.</param>
/// <param name="Switching">Time in them, without queues.</param>
/// <param name="Coding">Time in error-correcting codes.</param>
/// <param name="Way">Time in fibre and copper.</param>
public readonly record struct Delay(int Links, int Switches, Duration Switching, Duration Coding, Duration Way)
{
    /// <summary>All of it.</summary>
    public Duration Total => Switching + Coding + Way;

    /// <summary>One path after the other.</summary>
    public static Delay operator +(Delay left, Delay right) => new(left.Links + right.Links, left.Switches + right.Switches,
        left.Switching + right.Switching, left.Coding + right.Coding, left.Way + right.Way);
}
