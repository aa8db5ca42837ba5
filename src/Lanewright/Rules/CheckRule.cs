using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Findings;
using Lanewright.Quantities;

namespace Lanewright.Rules;

/// <summary>A rule about one comparison every link goes through: it speaks when the comparison fails.</summary>
public abstract class CheckRule : Rule
{
    /// <summary>Takes its code, its name, the comparison and the weight of its findings.</summary>
    protected CheckRule(string code, string name, string checkName, Severity severity = Severity.Error)
        : base(code, name, severity)
    {
        CheckName = checkName;
    }

    /// <summary>The comparison.</summary>
    public string CheckName { get; }

    /// <inheritdoc/>
    public sealed override void Judge(Judgement judgement)
    {
        foreach (var (choice, solution) in judgement.Judged())
        {
            foreach (var check in solution.Checks)
                if (check.Name == CheckName && Speaks(check)) judgement.Add(this, choice, Message(solution, check), check);
        }
    }

    /// <summary>What is wrong and what to do.</summary>
    protected abstract string Message(Solution solution, Check check);

    /// <summary>Whether the comparison is one to speak about.</summary>
    protected virtual bool Speaks(Check check) => check.Verdict == Verdict.Fail;

    /// <summary>A value of the comparison with its unit.</summary>
    protected static string Value(Check check) => check.Value is { } v ? Numerals.Unit(v, check.Unit) : "an unknown value";

    /// <summary>The limit of the comparison with its unit.</summary>
    protected static string Limit(Check check) => check.Limit is { } l ? Numerals.Unit(l, check.Unit) : "an unknown limit";

    /// <summary>How far outside the limit the value is.</summary>
    protected static string Gap(Check check) => check.Margin is { } m ? Numerals.Unit(Math.Abs(m), check.Unit) : "an unknown amount";

    /// <summary>What the comparison says, begun with the end it belongs to.</summary>
    protected static string NoteAtEnd(Check check) => $"{AtEnd(check)} {check.Note}".TrimStart();

    /// <summary>Which end, in words; empty when both.</summary>
    protected static string AtEnd(Check check) => check.End switch { "from" => " at the first end", "to" => " at the second end", _ => "" };
}
