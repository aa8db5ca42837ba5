namespace Lanewright.Engineering.Fabrics;

/// <summary>How much of an option still serves when lanes become one step faster.</summary>
/// <param name="Modules">Modules in use.</param>
/// <param name="ModulesServing">Those that go into a cage of the next lane rate which still lists their form and their lanes.</param>
/// <param name="Fibres">Fibres in use.</param>
/// <param name="FibresServing">Those over which an interface type of the next lane rate runs as far: same fibre, same count, same
/// connector, same wavelengths a fibre.</param>
public sealed record NextLaneRate(long Modules, long ModulesServing, long Fibres, long FibresServing);
