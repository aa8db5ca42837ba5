using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules.Links;

/// <summary>A cord that does not plug into the modules.</summary>
internal sealed class ConnectorDiffers() : CheckRule("LW2301", nameof(ConnectorDiffers), CheckNames.Connector)
{
    /// <inheritdoc/>
    protected override string Message(Solution solution, Check check) =>
        solution.Through is null
            ? $"{check.Note}; choose a cord with the connectors of both modules"
            : $"{check.Note}; modules, cords and the fronts of the panels have to go together";
}
