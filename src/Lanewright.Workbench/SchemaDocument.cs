using Lanewright.Deliverables.Json;
using Lanewright.Model.Binding;

namespace Lanewright.Workbench;

/// <summary>The schema of a plan's file: what the editor offers to type.</summary>
internal static class SchemaDocument
{
    /// <summary>Writes it.</summary>
    public static void Write(Stream stream) => SchemaJson.Write(PlanLanguage.File, "a plan", stream);
}
