using System.Collections.Immutable;
using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;
using Lanewright.Model.Binding;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary><c>polarity</c>: whether transmitters meet receivers along a chain of parts.</summary>
internal sealed class PolarityCommand
{
    private readonly Option<string?> chain = new("--chain")
    {
        Description = "the parts from end to end: array cables A, B, C, as in B,A,B; with duplex ends as in "
            + "A-to-B,straight,A,straight,A-to-A",
    };

    private readonly Option<string?> method = new("--method") { Description = "the parts of a polarity method: A, B, C, U1 or U2" };

    private readonly Option<string?> adapters = new("--adapters")
    {
        Description = "adapters where arrays meet: A (key up to key down) or B (key up to key up), one for all or one for each; A",
    };

    private readonly Option<string?> positions = new("--positions") { Description = "positions of the arrays: 8, 12, 16 or 24; 12" };

    private readonly Option<bool> angled = new("--angled") { Description = "the array ends are angled" };

    private readonly Option<bool> json = CommonOptions.Json();

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var options = new PolarityCommand();
        var command = new Command("polarity", "tell whether transmitters meet receivers along array cables, cords and transitions")
        {
            options.chain, options.method, options.adapters, options.positions, options.angled, options.json,
        };
        command.SetAction(options.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var table = StandardsLibrary.Shipped.Polarity;
        var (words, usual) = PartsAsked(parsed, table);
        var named = parsed.GetValue(adapters) is { } given ? Split(given) : [usual];
        if (named.IsEmpty) throw new UsageFault("--adapters names no adapter; write A or B");
        if (!FibreChainReader.TryRead(words, named, table, out var parts, out var problem)) throw new UsageFault(problem);
        const int duplex = 2;
        var across = parts.All(p => p.Kind == ArrayPartKind.Cord) ? duplex : PositionsAsked(parsed, table);
        var answer = PolarityAnswer.Of(new FibreChain(across, parts, parsed.GetValue(angled)), table);
        if (parsed.GetValue(json)) Screen.Document(stream => PolarityJson.Write(answer, stream));
        else Print(answer);
        return answer.Verdict == Verdict.Fail ? ExitCodes.ErrorsFound : ExitCodes.NoErrors;
    }

    private (ImmutableArray<string> Words, string Adapter) PartsAsked(ParseResult parsed, PolarityTable table)
    {
        var (asked, named) = (parsed.GetValue(chain), parsed.GetValue(method));
        if (asked is null == named is null) throw new UsageFault("say the parts with --chain, such as B,A,B, or a method with --method");
        if (asked is not null) return (Split(asked), "A");
        if (!table.Methods.Contains(named ?? ""))
            throw new UsageFault($"no method is called '{named}'; there are {string.Join(", ", table.Methods)}");
        return table.MethodOf(named ?? "");
    }

    private int PositionsAsked(ParseResult parsed, PolarityTable table)
    {
        const int usual = 12;
        if (parsed.GetValue(positions) is not { } text) return usual;
        if (Numerals.TryWhole(text, out var number) && table.Positions.Contains((int)number)) return (int)number;
        throw new UsageFault($"--positions '{text}' is no size of array known here; write one of {string.Join(", ", table.Positions)}");
    }

    private static ImmutableArray<string> Split(string text) =>
        [.. text.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

    private static void Print(PolarityAnswer answer)
    {
        Screen.Line($"{PolarityJson.Word(answer.Verdict)} [{Marks.Name(answer.Mark)}]");
        Screen.Line("  " + string.Join(", ", answer.Chain.Parts.Select(p => $"{PolarityJson.Kind(p.Kind)} {p.Name}")));
        var whole = answer.Chain.IsLinkWithoutCords ? " from end to end, cords counted" : "";
        Screen.Line($"  polarity{whole}: {PolarityJson.Polarity(answer.IsCrossed)}");
        if (!answer.LaneOrder.IsEmpty)
            Screen.Line($"  lanes arrive at: {string.Join(' ', answer.LaneOrder.Select(l => l == 0 ? "-" : Numerals.Whole(l)))}");
        if (!answer.Pairs.IsEmpty)
            Screen.Line($"  ports arrive at: {string.Join(' ', answer.Pairs.Select(p => p.Far == 0 ? "-" : Numerals.Whole(p.Far)))}");
        var cords = answer.Chain.IsLinkWithoutCords ? ", its duplex cords left out" : answer.Chain.IsOfCords ? ", of a duplex port" : "";
        if (!answer.Map.IsEmpty) Screen.Line($"  positions arrive at{cords}: {string.Join(' ', answer.Map)}");
        foreach (var reason in answer.Reasons) Screen.Line("  " + reason);
    }
}
