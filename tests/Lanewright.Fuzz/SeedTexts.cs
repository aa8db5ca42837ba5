using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Fuzz;

/// <summary>Texts to begin from: every plan on a rule page, the starter plan and the shipped tables.</summary>
internal static class SeedTexts
{
    public static IReadOnlyList<string> All()
    {
        var texts = RuleBook.Kinds
            .Select(k => RulePage.Find(k.Code))
            .OfType<RulePage>()
            .SelectMany(p => p.Plans("Example").Concat(p.Plans("Put right")))
            .ToList();
        texts.AddRange(EmbeddedText.Names("data/starter/").Select(n => EmbeddedText.Read(n).Content));
        texts.AddRange(EmbeddedText.Names("data/catalogue/").Select(n => EmbeddedText.Read(n).Content));
        return texts;
    }
}
