using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Lines;

/// <summary>The modules of a route at its ends, and how they go with the cages they sit in.</summary>
/// <param name="From">The module at the first site; null where the catalogue has none that runs the type.</param>
/// <param name="To">The same at the second site.</param>
/// <param name="Checks">Comparisons of modules with cages; none where the plan names no ports.</param>
public sealed record LineTerminals(ModuleModel? From, ModuleModel? To, ImmutableArray<Check> Checks);
