using Lanewright.Engineering.Choice;
using Lanewright.Model.Plant;
using Lanewright.Standards;

namespace Lanewright.Engineering.Plant;

/// <summary>Whether a cassette takes the end of a trunk that is plugged into its rear.</summary>
public static class CassetteFit
{
    /// <summary>What does not go together at either end, in words; empty where all does, and where the catalogue does not say.</summary>
    public static string Problem(StandardsLibrary standards, TrunkGroup trunk) =>
        Problem(standards, trunk, isFar: false) is { Length: > 0 } near ? near : Problem(standards, trunk, isFar: true);

    /// <summary>Why ends cannot mate or glass does not carry the light on: all links through such trunks are dark. Ports without fibres
    /// behind them leave the others as they are.</summary>
    public static string Dark(StandardsLibrary standards, TrunkGroup trunk) =>
        Dark(standards, trunk, isFar: false) is { Length: > 0 } near ? near : Dark(standards, trunk, isFar: true);

    /// <summary>What does not go together at one end.</summary>
    /// <param name="standards">What is usual at a connector.</param>
    /// <param name="trunk">The trunks.</param>
    /// <param name="isFar">Which end.</param>
    private static string Problem(StandardsLibrary standards, TrunkGroup trunk, bool isFar)
    {
        if (Dark(standards, trunk, isFar) is { Length: > 0 } dark) return dark;
        return trunk.CassetteAt(isFar) is { Cassette.Ports: { } ports } item && ports * 2 != trunk.Fibres
            ? $"{item.Name} has {ports} ports and the trunk {trunk.Fibres} fibres; {trunk.Fibres / 2} ports take them all"
            : "";
    }

    private static string Dark(StandardsLibrary standards, TrunkGroup trunk, bool isFar)
    {
        if (trunk.CassetteAt(isFar) is not { Cassette: { } cassette } item) return "";
        var (connector, polish, pins) = isFar
            ? (trunk.Cable.Far, trunk.Cable.PolishFar, trunk.Cable.PinsFar)
            : (trunk.Cable.Near, trunk.Cable.PolishNear, trunk.Cable.PinsNear);
        if (cassette.Rear.Length > 0 && cassette.Rear != connector)
            return $"{item.Name} takes {cassette.Rear} at its rear and the trunk ends in {connector}";
        if (!CordMatch.PolishFits(cassette.RearPolish, polish))
            return $"{item.Name} is {cassette.RearPolish} at its rear and the trunk {polish}: angled and flat ends must never mate";
        if (Pins(standards, connector, pins) is { Length: > 0 } own && own == cassette.RearPins)
            return $"{item.Name} is {own} at its rear and so is the trunk: of two ends that mate one has pins and one has none";
        var glass = standards.Fibre(trunk.Cable.Fibre)?.Kind == FibreKind.MultiMode ? "multi-mode" : "single-mode";
        return cassette.Glass.Length > 0 && cassette.Glass != glass
            ? $"{item.Name} is {cassette.Glass} and the trunk {glass}: light is lost or scattered where they meet"
            : "";
    }

    private static string Pins(StandardsLibrary standards, string connector, string said) =>
        said.Length > 0 ? said : standards.Connector(connector)?.Word("cord-pins") ?? "";
}
