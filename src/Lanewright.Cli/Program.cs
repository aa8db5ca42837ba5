using System.CommandLine;
using Lanewright.Cli;
using Lanewright.Cli.Commands;

var root = new RootCommand("Lanewright turns a plan of sites, racks, devices and links into a proven, priced and cabled network.");
root.Subcommands.Add(BuildCommand.Create());
root.Subcommands.Add(CheckCommand.Create());
root.Subcommands.Add(OpenCommand.Create());
root.Subcommands.Add(WhyCommand.Create());
root.Subcommands.Add(LoadCommand.Create());
root.Subcommands.Add(LinkCommand.Create());
root.Subcommands.Add(MateCommand.Create());
root.Subcommands.Add(PolarityCommand.Create());
root.Subcommands.Add(TraceCommand.Create());
root.Subcommands.Add(PlaceCommand.Create());
root.Subcommands.Add(TrunksCommand.Create());
root.Subcommands.Add(LineCommand.Create());
root.Subcommands.Add(GridCommand.Create());
root.Subcommands.Add(FecCommand.Create());
root.Subcommands.Add(FillCommand.Create());
root.Subcommands.Add(FeedCommand.Create());
root.Subcommands.Add(SparesCommand.Create());
root.Subcommands.Add(SizeCommand.Create());
root.Subcommands.Add(ExplainCommand.Create());
root.Subcommands.Add(StandardsCommand.Create());
root.Subcommands.Add(CatalogueCommand.Create());
root.Subcommands.Add(SchemaCommand.Create());
root.Subcommands.Add(NewCommand.Create());
return CommandRunner.Run(root, args);

/// <summary>Said here so that the web framework does not make it public.</summary>
internal sealed partial class Program;
