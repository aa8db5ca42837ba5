namespace Lanewright.Engineering.Plant;

/// <summary>Where a fibre is met: a position of an array, or one of the two fibres of a duplex port.</summary>
/// <param name="Port">The duplex port, from 1; 0 at an array.</param>
/// <param name="Side">At a duplex port 1 for the side of the transmitter, 2 for that of the receiver; 0 at an array.</param>
/// <param name="Position">The position of an array, from 1; 0 at a duplex port.</param>
public readonly record struct FibreSpot(int Port, int Side, int Position)
{
    /// <summary>A position of an array.</summary>
    public static FibreSpot Of(int position) => new(0, 0, position);

    /// <summary>A fibre of a duplex port.</summary>
    public static FibreSpot Of(int port, int side) => new(port, side, 0);

    /// <summary>Whether it is at a duplex port.</summary>
    public bool IsDuplex => Port > 0;

    /// <summary>The other side of the same port.</summary>
    public FibreSpot Crossed => Of(Port, 3 - Side);
}
