namespace Lanewright.Tests.Fabrics.Support;

/// <summary>An invented switch.</summary>
internal sealed record SyntheticSwitch(string Name, int Radix, int Price, int Power = 0);
