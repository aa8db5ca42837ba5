using Lanewright.Engineering.Links;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Choice;

/// <summary>Says why a way to make a link was not taken.</summary>
public static class LostBy
{
    /// <summary>The reason, in a few words.</summary>
    public static string Reason(Solution lost, ChosenShare? winner, string currency)
    {
        var isByStock = winner is not null && winner.Price < winner.Solution.Price && winner.Price <= lost.Price;
        return isByStock && lost.Price < winner?.Solution.Price && lost.Verdict == winner.Solution.Verdict
            ? $"the one taken costs {winner.Price} {currency} a link with what is in stock"
            : Reason(lost, winner?.Solution, currency);
    }

    /// <summary>The reason when both are bought new, in a few words.</summary>
    public static string Reason(Solution lost, Solution? winner, string currency)
    {
        var failing = lost.Checks.FirstOrDefault(c => c.Verdict == Verdict.Fail && !c.IsAdvice);
        if (failing is not null) return Describe(failing);
        var unproven = lost.Checks.FirstOrDefault(c => c.Verdict == Verdict.Unproven && !c.IsAdvice);
        if (unproven is not null && winner?.Verdict == Verdict.Pass) return $"{unproven.Name} cannot be proved: {unproven.Note}";
        if (winner is null || ReferenceEquals(lost, winner)) return "";
        if (lost.Price > winner.Price) return $"dearer by {lost.Price - winner.Price} {currency} a link";
        if (lost.Price == winner.Price && lost.Power > winner.Power) return $"same price, {lost.Power - winner.Power} more";
        return lost.Price == winner.Price ? "same price and power, later in the alphabet" : "the policy prefers another";
    }

    /// <summary>A failing comparison in a few words.</summary>
    public static string Describe(Check check)
    {
        if (check is not { Margin: { } margin, Value: { } value, Limit: { } limit }) return $"{check.Name}: {check.Note}";
        return $"{check.Name}: {Numerals.Shown(value, check.Unit)} against {Numerals.Shown(limit, check.Unit)}, "
            + $"{Numerals.Shown(Math.Abs(margin), check.MarginUnit)} outside";
    }
}
