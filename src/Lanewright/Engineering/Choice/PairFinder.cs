using System.Collections.Immutable;
using Lanewright.Engineering.Cabling;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Choice;

/// <summary>Ways to make a link over twisted pair.</summary>
internal sealed class PairFinder(FinderContext context)
{
    private const string Medium = "CAT6A";
    private const string Socket = "RJ45";

    /// <summary>Cords between sockets, or modules with sockets.</summary>
    public IEnumerable<Solution> Find(LinkClass link)
    {
        var statement = link.Statement;
        if (statement.Type is not null || statement.Assembly is not null || !FinderContext.Allows(statement, Medium)) yield break;
        var type = context.Standards.CopperTypes.FirstOrDefault(t => t.IsTwistedPair && t.Rate == statement.Rate);
        if (type is null || (statement.CopperType is { } named && named != type)) yield break;
        if (link.Shape != FanShape.Single || link.Needed is not { } needed) yield break;
        var fromModule = ModuleFor(link.From, type, statement.From.Module);
        var toModule = ModuleFor(link.To, type, statement.To.Module);
        if (!IsSocket(link.From) && fromModule is null) yield break;
        if (!IsSocket(link.To) && toModule is null) yield break;
        foreach (var cord in context.Catalogue.Cords.Where(c => c.IsTwistedPair && (statement.Cord is null || statement.Cord == c)))
            foreach (var length in context.LengthsFor(link, cord))
                yield return Judge(link, type, cord, length ?? needed, fromModule, toModule);
    }

    private static bool IsSocket(EndSpec end) => end.Cage.FormFactor.Name == Socket;

    private ModuleModel? ModuleFor(EndSpec end, CopperType type, ModuleModel? named) => IsSocket(end)
        ? null
        : context.Catalogue.Modules.FirstOrDefault(m =>
            (named is null || named == m)
            && end.Cage.FormFactor.Accepts.Contains(m.FormFactor.Name)
            && m.Applications.Any(a => a.Copper == type));

    private Solution Judge(LinkClass link, CopperType type, CordModel cord, Length length, ModuleModel? fromModule, ModuleModel? toModule)
    {
        var statement = link.Statement;
        var from = FinderContext.UseOf(link.From, statement.From, statement.Rate);
        var to = FinderContext.UseOf(link.To, statement.To, statement.Rate);
        var latency = LinkLatency.OverCopper(context.Standards, isTwistedPair: true, length, type.Fec);
        var checks = ImmutableArray.CreateBuilder<Check>();
        checks.AddRange(EndChecks(from, fromModule, type, "from"));
        checks.AddRange(EndChecks(to, toModule, type, "to"));
        checks.Add(Check.AtMost(CheckNames.Reach, length.Metres, type.Reach?.As(l => l.Metres), "m"));
        checks.AddRange(StartupChecks.OnCopper(from, to, type));
        if (link.FromRack is { } rack) checks.Add(BendSpace.OfCord(context.Standards, cord, rack, "from"));
        if (link.ToRack is { } other && other != link.FromRack) checks.Add(BendSpace.OfCord(context.Standards, cord, other, "to"));
        checks.AddRange(context.Common(link, Medium, isDraft: false, isNamed: true, length, latency));
        var modules = new[] { fromModule, toModule }.OfType<ModuleModel>().ToList();
        return new Solution
        {
            Name = string.Join(" + ", modules.Select(m => m.Name).Append($"{cord.Name} {length}")),
            Medium = CableMedium.TwistedPair,
            MediumName = Medium,
            TypeName = type.Name,
            FromModule = fromModule,
            FromApplication = fromModule?.Applications.First(a => a.Copper == type),
            ToModule = toModule,
            ToApplication = toModule?.Applications.First(a => a.Copper == type),
            Cable = cord,
            Length = length,
            Checks = checks.ToImmutable(),
            Parts = FinderContext.WithoutExisting(
                statement, [.. modules.Select(m => new PartUse(m, null, 1)), new PartUse(cord, length, 1)]),
            FromFec = FecSide.None,
            ToFec = FecSide.None,
            Autonegotiates = StartupChecks.Runs(from, to, type),
            Latency = latency,
            Power = Watts.From(modules.Sum(m => m.Power.Value)),
        };
    }

    private static ImmutableArray<Check> EndChecks(EndUse end, ModuleModel? module, CopperType type, string side)
    {
        if (module is not null) return HostSideChecks.OfModule(end, module, module.Applications.First(a => a.Copper == type), side);
        var listed = end.Cage.Modes.Contains(end.Mode);
        var note = listed ? "" : $"the platform does not list {end.Mode} for this socket";
        var platform = new Citation("port list of the platform", "", "", end.Cage.Mark);
        return [Check.Of(CheckNames.PortMode, listed, platform, note) with { End = side }];
    }
}
