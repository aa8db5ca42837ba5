using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Standards;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>The ribbon of a link over twisted pair: every pair carries both directions at once.</summary>
internal static class PairRibbon
{
    private const int Pairs = 4;

    /// <summary>The ribbon, or null when the way is none over twisted pair.</summary>
    /// <param name="way">The way.</param>
    /// <param name="standards">Where the type is looked up.</param>
    public static RibbonModel? Of(LinkWay way, StandardsLibrary standards)
    {
        var solution = way.Solution;
        if (solution.Medium != CableMedium.TwistedPair) return null;
        var type = standards.Copper(solution.TypeName);
        var plug = PlugLayout.OfTwistedPair(type?.Lanes ?? Pairs);
        var link = way.Class;
        return new RibbonModel
        {
            Near = EndOf("A", solution.FromModule, solution.FromApplication, plug),
            Far = [EndOf("B", solution.ToModule, solution.ToApplication, plug)],
            Strands = [.. plug.Sends.Select(row => new Strand(row, 0, row, StrandWay.Both, StrandKind.Pair))],
            Heads = new RibbonHeads(
                RibbonWords.Port("Port A", link.From, link.Statement.Rate, solution.FromFec, solution.Autonegotiates),
                BodyWords("Module A", solution.FromModule),
                RibbonWords.Cable(solution, link.Statement.IsExisting, ["RJ45 to RJ45, four pairs"]),
                BodyWords("Module B", solution.ToModule),
                RibbonWords.Port("Port B", link.To, link.Statement.Rate, solution.ToFec, solution.Autonegotiates)),
            Spans = [.. Spans(solution, type)],
            Notes = ["Every pair carries both directions at once; the two ends cancel their own signal."],
        };
    }

    private static RibbonEnd EndOf(string name, ModuleModel? module, Application? runs, PlugLayout plug) => new()
    {
        Name = name,
        Ports = [""],
        LanesPerPort = module is null ? 0 : runs?.Host.Lanes ?? 0,
        Body = module is null ? EndBody.Socket : EndBody.PairModule,
        Block = module is null ? null : new LaneBlock("pair driver", ""),
        Plug = plug,
    };

    private static ImmutableArray<string> BodyWords(string heading, ModuleModel? module) =>
        module is null ? [] : [heading, module.Name, module.Title, $"{module.FormFactor.Name}, at most {module.Power}"];

    private static IEnumerable<Span> Spans(Solution solution, CopperType? type)
    {
        yield return new Span(0, Stop.NearPlug, Stop.FarPlug, $"{solution.MediumName}, {solution.Length}");
        if (solution.FromApplication is { } a)
            yield return new Span(0, Stop.NearPort, Stop.NearBlock, RibbonWords.Host(1, a.Host.Name, a.Host.Lanes, a.Host.Signal));
        if (solution.ToApplication is { } b)
            yield return new Span(0, Stop.FarBlock, Stop.FarPort, RibbonWords.Host(1, b.Host.Name, b.Host.Lanes, b.Host.Signal));
        var (near, far) = (Ends(solution.FromModule, Stop.NearPort, Stop.NearBlock), Ends(solution.ToModule, Stop.FarPort, Stop.FarBlock));
        var code = type?.Fec is { Length: > 0 } fec && fec != FecSide.None ? ", code " + fec + " made and ended at the pairs" : "";
        yield return new Span(1, near, far, $"{solution.TypeName}: four pairs, both directions on each{code}");
    }

    private static Stop Ends(ModuleModel? module, Stop port, Stop block) => module is null ? port : block;
}
