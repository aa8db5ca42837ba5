using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Mating;
using Lanewright.Model.Binding;
using Lanewright.Model.Links;
using Lanewright.Rules;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary><c>mate</c>: whether two ends work together.</summary>
internal static class MateCommand
{
    /// <summary>The command.</summary>
    public static Command Create()
    {
        var a = new Argument<string>("A") { Description = "one end: TYPE, MODULE/TYPE or CAGE:LANES/MODULE/TYPE" };
        var b = new Argument<string>("B") { Description = "the other end" };
        var medium = new Option<string?>("--medium") { Description = "class of fibre between them" };
        var length = new Option<string?>("--length") { Description = "length of the way between them" };
        var json = CommonOptions.Json();
        var command = new Command("mate", "tell whether two ends work together, and under which conditions") { a, b, medium, length, json };
        command.SetAction(parsed =>
        {
            var standards = StandardsLibrary.Shipped;
            var way = new MatingWay(FibreOf(standards, parsed.GetValue(medium)), QuantityOptions.Length(parsed, length));
            var near = EndOf(standards, parsed.GetRequiredValue(a));
            var far = EndOf(standards, parsed.GetRequiredValue(b));
            var answer = Mating.Of(standards, near, far, way);
            if (parsed.GetValue(json)) Screen.Document(stream => AnswersJson.Write(answer, stream));
            else Print(answer);
            return answer.Verdict == MatingVerdict.Never ? ExitCodes.ErrorsFound : ExitCodes.NoErrors;
        });
        return command;
    }

    private static PortDescription EndOf(StandardsLibrary standards, string text) =>
        PortDescriptionReader.TryRead(text, standards, out var end, out var problem) ? end : throw new UsageFault(problem);

    private static Fibre? FibreOf(StandardsLibrary standards, string? name)
    {
        if (name is null or "DAC" or "CAT6A") return null;
        if (standards.Fibre(name) is { } fibre) return fibre;
        var known = standards.Fibres.Select(f => f.Name).ToList();
        throw new UsageFault($"no fibre is called '{name}'{Spelling.DidYouMean(name, known)}; known are {string.Join(", ", known)}");
    }

    private static void Print(MatingAnswer answer)
    {
        Screen.Line(AnswersJson.Word(answer.Verdict));
        foreach (var condition in answer.Conditions) Screen.Line("  if: " + condition);
        foreach (var reason in answer.Reasons)
            Screen.Line($"  because ({CheckCodes.Of(reason.CheckName)?.Code ?? reason.CheckName}): {reason.Text}");
    }
}
