using Lanewright.Standards;

namespace Lanewright.Engineering.Plant;

/// <summary>What is wrong with a fibre way, or not known of it, in words.</summary>
internal static class PolarityWords
{
    /// <summary>Transmitters meet transmitters.</summary>
    public const string NotCrossed = "transmitters meet transmitters";

    /// <summary>Lanes change places.</summary>
    public const string OtherOrder =
        "transmitters meet receivers, but lanes arrive in another order, which takes the ports of a split cage apart";

    /// <summary>A fibre goes astray.</summary>
    public const string Parted = "a fibre arrives at another port than its own";

    /// <summary>Port m does not meet port m.</summary>
    public const string OtherPorts = "ports arrive under other numbers: print the port map, do not take 1 to be 1";

    /// <summary>The order of duplex ports was not read.</summary>
    public const string OrderUnknown = "which port is which inside the transition is not known: take it from its label";

    /// <summary>Ports are known, and not the fibres they lie on.</summary>
    public const string FibresUnknown =
        "each port arrives under its own number, whatever the order inside the transitions; on which fibres it lies was not read: take "
        + "that from its label";

    /// <summary>How two rows are reversed was not read.</summary>
    public static string RowsUnknown(int positions) =>
        $"how a reversing part leads {positions} positions in two rows is not known: take it from the drawing of the assembly";

    /// <summary>Where lanes are on an array was not read.</summary>
    public static string LanesUnknown(int positions) =>
        $"the order of lanes on {positions} positions is not known, so only the map is told";

    /// <summary>Angled ends in an adapter that does not take them.</summary>
    public static string Angled(ArrayPart adapter) => $"angled ends do not meet in a type-{adapter.Name} adapter: take type A";
}
