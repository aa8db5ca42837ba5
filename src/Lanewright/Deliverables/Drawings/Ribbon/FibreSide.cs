using Lanewright.Engineering.Choice;
using Lanewright.Model.Catalogues;
using Lanewright.Standards;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>One end of a link of modules and fibre.</summary>
/// <param name="Spec">The cage.</param>
/// <param name="Module">The module.</param>
/// <param name="Runs">What it runs.</param>
/// <param name="Type">The optical side of that.</param>
/// <param name="Fec">The code set at the port.</param>
/// <param name="Side">Which side of the statement it is: <c>from</c> or <c>to</c>.</param>
internal sealed record FibreSide(EndSpec Spec, ModuleModel Module, Application Runs, InterfaceType Type, string Fec, string Side)
{
    /// <summary>How often the module runs it in its cage: once for each port, unless it cannot.</summary>
    public int Runnings => Math.Max(1, Math.Min(Spec.Ways, Runs.Instances));

    /// <summary>What the module shows to the cord.</summary>
    public ModuleOpening Opening { get; } = ModuleOpening.Of(Module);
}
