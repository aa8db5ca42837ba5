using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Links;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary><c>fec</c>: what bit errors before a code come to behind it.</summary>
internal sealed class FecCommand
{
    private const int MostInterleaved = 64;

    private readonly Argument<string> code = new("CODE")
    {
        Description = "a code such as \"RS(544,514)\", or the interface type of a wavelength such as 400ZR",
    };
    private readonly Option<string?> errors = new("--ber") { Description = "share of wrong bits before the code, such as 2.4e-4" };
    private readonly Option<string?> quality = new("--q")
    {
        Description = "instead: half the distance of two levels over the noise, such as 7.03",
    };
    private readonly Option<string?> lost = new("--codewords")
    {
        Description = "instead: share of codewords that may be lost, such as 1e-15; tells the bit errors that make it",
    };
    private readonly Option<string> signal = new("--signal")
    {
        Description = "with --q: NRZ or PAM4; NRZ", DefaultValueFactory = _ => "NRZ",
    };
    private readonly Option<int> interleaved = new("--interleaved")
    {
        Description = "codewords that bits are dealt out to in turn; 1", DefaultValueFactory = _ => 1,
    };
    private readonly Option<bool> json = CommonOptions.Json();

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var options = new FecCommand();
        var command = new Command("fec", "tell what bit errors before an error-correcting code come to")
        {
            options.code, options.errors, options.quality, options.lost, options.signal, options.interleaved, options.json,
        };
        command.SetAction(options.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var standards = StandardsLibrary.Shipped;
        var name = parsed.GetValue(code) ?? "";
        if (parsed.GetValue(interleaved) is < 1 or > MostInterleaved) throw new UsageFault("--interleaved lies between 1 and 64");
        var answer = CodeAnswer.Of(standards, name, Errors(parsed, standards, name), parsed.GetValue(interleaved));
        if (answer is null)
        {
            var known = standards.Sheets["fec"].Sheets.Where(s => s.Real("smallest-bits") is null).Select(s => s.Subject)
                .Concat(standards.WavelengthTypes.Select(t => t.Name)).ToList();
            throw new UsageFault($"no code and no type is called '{name}'{Spelling.DidYouMean(name, known)}; "
                + $"known are {string.Join(", ", known)}");
        }
        if (parsed.GetValue(json)) Screen.Document(stream => CodeJson.Write(answer, stream));
        else Print(answer);
        return answer.Verdict == Verdict.Fail ? ExitCodes.ErrorsFound : ExitCodes.NoErrors;
    }

    private double Errors(ParseResult parsed, StandardsLibrary standards, string name)
    {
        var (share, q, words) = (Share(parsed, errors), Share(parsed, quality), Share(parsed, lost));
        if (new[] { share, q, words }.Count(given => given is not null) != 1)
            throw new UsageFault("give one of --ber, --q and --codewords");
        if (share is { } stated)
            return stated is >= 0 and < 0.5 ? stated : throw new UsageFault("--ber lies between 0 and 0.5");
        if (words is { } most)
        {
            if (most is not (>= 1e-30 and < 1)) throw new UsageFault("--codewords lies between 1e-30 and 1");
            return ReedSolomonCode.Find(standards, name)?.BitErrorsFor(most)
                ?? throw new UsageFault($"how '{name}' loses codewords is not known; --codewords goes with Reed-Solomon codes");
        }
        if (q is not (>= 0 and <= 40)) throw new UsageFault("--q lies between 0 and 40");
        return parsed.GetValue(signal) switch
        {
            "NRZ" => LevelErrors.OfTwo(q ?? 0),
            "PAM4" => LevelErrors.OfFour(q ?? 0),
            var other => throw new UsageFault($"--signal '{other}' is neither NRZ nor PAM4"),
        };
    }

    private static double? Share(ParseResult parsed, Option<string?> option) =>
        QuantityOptions.Number(parsed, option, "number such as 2.4e-4");

    private static void Print(CodeAnswer answer)
    {
        (string What, double? Value)[] shares =
        [
            ("errors before the code", answer.Errors), ("the code corrects", answer.Limit?.Value), ("codewords lost", answer.Codewords),
            ("smallest frames lost", answer.Frames), ("smallest frames lost without a code", answer.FramesUncoded),
            ("errors behind the code", answer.ErrorsBehind),
        ];
        Screen.Print(["share", ""], shares.Where(s => s.Value is not null).Select(s =>
            (IReadOnlyList<string>)[s.What, Numerals.Scientific(s.Value ?? 0)]));
        if (answer.QualityOfTwo is { } two)
            Screen.Line($"as many errors as two levels have at a quality of {Numerals.Plain(Math.Round(two, 3))}"
                + (answer.QualityOfFour is { } four ? $", four at {Numerals.Plain(Math.Round(four, 3))}" : ""));
        var margin = answer.Margin is { } known ? $", margin {Numerals.Shown(known.Value, "dB")}" : ", no limit is known";
        var mark = answer.Limit is { } limit ? $" [{Marks.Name(limit.Source.Mark)}]" : "";
        Screen.Line($"{answer.Name}: {Checks.Word(answer.Verdict)}{mark}{margin}; errors are taken as random, and bursts do worse");
    }
}
