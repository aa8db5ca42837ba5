namespace Lanewright.Engineering.Fabrics;

/// <summary>A switch as a core over aggregation switches that go up in one way.</summary>
/// <param name="Build">The switch.</param>
/// <param name="Use">How it opens its ports.</param>
/// <param name="Most">Ports it has then.</param>
/// <param name="Trunks">What the links to it cost at the least.</param>
internal sealed record CoreChoice(SwitchBuild Build, PortUse Use, int Most, LinkRates Trunks);
