using System.Collections.Immutable;
using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Json;
using Lanewright.Model.Binding;
using Lanewright.Model.Catalogues;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary><c>catalogue</c>: list and search what can be bought, or show one model whole.</summary>
internal sealed class CatalogueCommand
{
    private readonly Argument<string?> model = new("MODEL")
    {
        Description = "one model to show whole, such as m-400g-dr4-dd",
        Arity = ArgumentArity.ZeroOrOne,
    };
    private readonly Option<string?> plan = new("--plan") { Description = "the catalogue of this plan instead of the shipped one" };
    private readonly Option<string?> kind = new("--kind") { Description = "only " + string.Join(", ", CatalogueQuery.Kinds) };
    private readonly Option<string?> rate = new("--rate") { Description = "only models that run ports of this rate" };
    private readonly Option<string?> formFactor = new("--form-factor")
    {
        Description = "only models of this body, or with cages for it",
    };
    private readonly Option<string?> find = new("--find") { Description = "only models whose name, title or values hold this text" };
    private readonly Option<bool> json = CommonOptions.Json();

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var options = new CatalogueCommand();
        var command = new Command("catalogue", "list and search the models a plan may name, or show one whole")
        {
            options.model, options.plan, options.kind, options.rate, options.formFactor, options.find, options.json,
        };
        command.SetAction(options.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var (catalogue, currency) = CatalogueOf(parsed.GetValue(plan));
        var query = new CatalogueQuery(StandardsLibrary.Shipped, catalogue)
        {
            Kind = parsed.GetValue(kind),
            Rate = QuantityOptions.Rate(parsed, rate),
            FormFactor = parsed.GetValue(formFactor),
            Find = parsed.GetValue(find),
        };
        if (query.Problem is { } problem) throw new UsageFault(problem);
        var found = parsed.GetValue(model) is { } named ? [Named(catalogue, named)] : query.Answer();
        if (parsed.GetValue(json)) Screen.Document(stream => CatalogueJson.Write(found, currency, stream));
        else if (parsed.GetValue(model) is not null) Show(found[0]);
        else List(found, currency);
        return ExitCodes.NoErrors;
    }

    private static (Catalogue Catalogue, string Currency) CatalogueOf(string? plan)
    {
        if (plan is null) return (CatalogueBinder.Shipped, "CU");
        var judged = CommonOptions.Compile(plan);
        return judged.Plan is { } bound
            ? (bound.Catalogue, bound.Currency)
            : throw new UsageFault($"nothing could be made of the plan '{plan}'; 'lanewright check' shows what stands in the way");
    }

    private static ICatalogueItem Named(Catalogue catalogue, string name) =>
        catalogue.Find<ICatalogueItem>(name)
        ?? throw new UsageFault(
            $"no model is called '{name}'{Spelling.DidYouMean(name, catalogue.Names<ICatalogueItem>())}; "
            + "'lanewright catalogue --find TEXT' searches");

    private static void List(ImmutableArray<ICatalogueItem> found, string currency)
    {
        Screen.Print(
            ["kind", "model", "title", "form factor", "runs", currency, "price mark"],
            found.Select(i => (IReadOnlyList<string>)
            [
                PartsView.KindOf(i), i.Name, i.Title, string.Join(", ", CatalogueSheet.FormFactors(i)), CatalogueSheet.Summary(i),
                i.Price.ToString(), Marks.Name(i.PriceMark),
            ]));
        Screen.Line($"{found.Length} models; 'lanewright catalogue MODEL' shows one whole. Prices marked 'invented' are placeholders");
    }

    private static void Show(ICatalogueItem item)
    {
        Screen.Line(item.Name);
        Screen.Print(["key", "value"], CatalogueSheet.Of(item).Select(v => (IReadOnlyList<string>)[v.Key, v.Value]));
    }
}
