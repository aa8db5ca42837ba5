using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables.Json;
using Lanewright.Model.Binding;

namespace Lanewright.Cli.Commands;

/// <summary><c>schema</c>: the JSON Schema of plans or catalogues, for editors.</summary>
internal static class SchemaCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var catalogue = new Option<bool>("--catalogue") { Description = "the schema of catalogue files instead of plans" };
        var command = new Command("schema", "print the JSON Schema of plan files, with which YAML editors complete and check them")
        {
            catalogue,
        };
        command.SetAction(parsed =>
        {
            var (shape, title) = parsed.GetValue(catalogue)
                ? (CatalogueLanguage.File, "Lanewright catalogue")
                : (PlanLanguage.File, "Lanewright plan");
            Screen.Document(stream => SchemaJson.Write(shape, title, stream));
            return ExitCodes.NoErrors;
        });
        return command;
    }
}
