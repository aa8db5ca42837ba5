using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Standards;

namespace Lanewright.Engineering.Choice;

/// <summary>A module in a cage at one end of a link.</summary>
/// <param name="Module">The module.</param>
/// <param name="Application">What it runs for this link.</param>
/// <param name="Type">The interface type of that.</param>
/// <param name="Use">The cage.</param>
/// <param name="Checks">The comparisons of the two.</param>
internal sealed record ModuleEnd(ModuleModel Module, Application Application, InterfaceType Type, EndUse Use, ImmutableArray<Check> Checks)
{
    /// <summary>What it shows to the cord.</summary>
    public ModuleOpening Opening => ModuleOpening.Of(Module);
}
