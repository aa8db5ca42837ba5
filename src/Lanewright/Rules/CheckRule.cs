using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Findings;
using Lanewright.Model;
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
        // Both ends may say the same, and two sources may set the same limit: the worst of them speaks.
        var spoken = judgement.SpokenOf(CheckName)
            .Where(s => Speaks(s.Check, s.Solution))
            .GroupBy(s => (s.Choice.Class.Index, s.Solution.Checks))
            .Select(way => way.OrderBy(s => Margin(s.Check)).First());
        // One set of links may fail in several classes, by a little here and by more there: the worst stands for all of them.
        foreach (var set in spoken.GroupBy(s => s.Choice.Class.Statement.Index))
        {
            var worst = set.OrderBy(s => Margin(s.Check)).ThenBy(s => s.Choice.Class.Index).First();
            var links = set.DistinctBy(s => s.Choice.Class.Index).Sum(s => (long)s.Choice.Class.Count);
            judgement.Add(this, worst.Choice, Message(judgement.Plan, worst.Choice.Class, worst.Solution, worst.Check), worst.Check, links);
        }
    }

    private static double Margin(Check check) => check.Margin ?? double.NegativeInfinity;

    /// <summary>What is wrong and what to do, where the place in the plan is part of it.</summary>
    protected virtual string Message(Plan plan, LinkClass link, Solution solution, Check check) => Message(solution, check);

    /// <summary>What is wrong and what to do.</summary>
    protected abstract string Message(Solution solution, Check check);

    /// <summary>Whether the comparison is one to speak about.</summary>
    protected virtual bool Speaks(Check check, Solution solution) => check.Verdict == Verdict.Fail;

    /// <summary>A value of the comparison with its unit.</summary>
    protected static string Value(Check check) => check.Value is { } v ? Numerals.Shown(v, check.Unit) : "an unknown value";

    /// <summary>The limit of the comparison with its unit.</summary>
    protected static string Limit(Check check) => check.Limit is { } l ? Numerals.Shown(l, check.Unit) : "an unknown limit";

    /// <summary>How far outside the limit the value is.</summary>
    protected static string Gap(Check check) => check.Margin is { } m ? Numerals.Shown(Math.Abs(m), check.MarginUnit) : "an unknown amount";

    /// <summary>What the comparison says, begun with the end it belongs to.</summary>
    protected static string NoteAtEnd(Check check) => $"{AtEnd(check)} {check.Note}".TrimStart();

    /// <summary>Which end, in words; empty when both.</summary>
    protected static string AtEnd(Check check) => check.End switch { "from" => " at the first end", "to" => " at the second end", _ => "" };
}
