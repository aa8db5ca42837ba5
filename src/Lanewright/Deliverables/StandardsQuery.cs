using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Deliverables;

/// <summary>A search in the standards tables.</summary>
public sealed record StandardsQuery(StandardsLibrary Library, Catalogue Catalogue)
{
    private const string ModuleCodes = "module-codes";

    private static readonly ImmutableArray<string> ReachFields = ["reach-os2", "reach-om3", "reach-om4", "reach-om5", "reach"];

    /// <summary>Only this table; null for those a plan is judged by.</summary>
    public string? Table { get; init; }

    /// <summary>Only subjects of this rate.</summary>
    public BitRate? Rate { get; init; }

    /// <summary>Only types that run on this medium.</summary>
    public string? Medium { get; init; }

    /// <summary>Only types that reach this far.</summary>
    public Length? Reach { get; init; }

    /// <summary>Only types a shipped module of this form factor runs.</summary>
    public string? FormFactor { get; init; }

    /// <summary>Only subjects that hold this text.</summary>
    public string? Find { get; init; }

    /// <summary>What is wrong with the question; null when nothing is.</summary>
    public string? Problem
    {
        get
        {
            var tables = Library.Sheets.Keys.Append(ModuleCodes).ToList();
            if (Table is { } table && !tables.Contains(table))
                return $"no table is called '{table}'{Spelling.DidYouMean(table, tables)}; tables are {string.Join(", ", tables)}";
            if (FormFactor is { } name && Library.FormFactor(name) is null)
                return $"no form factor is called '{name}'{Spelling.DidYouMean(name, Library.FormFactors.Select(f => f.Name))}";
            var media = Library.Fibres.Select(f => f.Name).Append("DAC").Append("CAT6A").ToList();
            return Medium is { } medium && !media.Contains(medium)
                ? $"no medium is called '{medium}'{Spelling.DidYouMean(medium, media)}; media are {string.Join(", ", media)}"
                : null;
        }
    }

    /// <summary>The subjects found, table by table.</summary>
    public IReadOnlyList<(string Table, FactSheet Sheet)> Answer()
    {
        var isAboutTypes = Medium is not null || Reach is not null || FormFactor is not null;
        return [.. All().Where(s => (!isAboutTypes || s.Table is "interface-types" or "copper-types") && Fits(s.Sheet))];
    }

    /// <summary>The subjects of a name in all tables.</summary>
    public static IReadOnlyList<(string Table, FactSheet Sheet)> Subjects(StandardsLibrary library, string name)
    {
        var found = library.Sheets
            .SelectMany(
                t => t.Value.Sheets.Where(s => s.Subject.Equals(name, StringComparison.OrdinalIgnoreCase)).Take(1),
                (t, s) => (t.Key, s))
            .ToList();
        if (found.Count == 0 && name.Contains('/') && StandardsLibrary.LoadModuleCodes()[name] is { } code) found.Add((ModuleCodes, code));
        return found;
    }

    /// <summary>The texts the values of a subject were read in.</summary>
    public static IEnumerable<(string Key, string What)> TextsReadIn(FactSheet sheet)
    {
        var keys = sheet.Facts
            .SelectMany(f => f.Source.ReadIn.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries))
            .ToHashSet(StringComparer.Ordinal);
        return StandardsLibrary.LoadDocuments().Where(d => keys.Contains(d.Key)).Select(d => (d.Key, d.Value));
    }

    private IEnumerable<(string Table, FactSheet Sheet)> All()
    {
        foreach (var (name, table) in Library.Sheets.Where(t => Table is null || t.Key == Table))
            foreach (var sheet in table.Sheets) yield return (name, sheet);
        // The code tables are long: they are searched when asked for or when a text is looked for.
        if (Table != ModuleCodes && (Table is not null || Find is null)) yield break;
        foreach (var sheet in StandardsLibrary.LoadModuleCodes().Sheets) yield return (ModuleCodes, sheet);
    }

    private bool Fits(FactSheet sheet)
    {
        if (Rate is { } rate && sheet.Rate("rate") != rate) return false;
        if (Find is { } text && !sheet.Subject.Contains(text, StringComparison.OrdinalIgnoreCase)
            && !sheet.Facts.Any(f => f.Value.Contains(text, StringComparison.OrdinalIgnoreCase)
                || f.Source.ToString().Contains(text, StringComparison.OrdinalIgnoreCase))) return false;
        if (FormFactor is { } formFactor && !RunsIn(sheet.Subject, formFactor)) return false;
        return Medium is null && Reach is null || ReachOf(sheet) is { } reach && (Reach is not { } least || reach >= least);
    }

    private bool RunsIn(string type, string formFactor) =>
        Catalogue.Modules.Any(m => m.FormFactor.Name == formFactor && m.Applications.Any(a => a.MediaName == type))
        || Catalogue.Assemblies.Any(a => a.Type?.Name == type && (a.Near.Name == formFactor || a.Far.Name == formFactor));

    /// <summary>How far a type reaches on the medium asked for, or on its best one; null when it does not run on it.</summary>
    private Length? ReachOf(FactSheet sheet)
    {
        var isPair = sheet.Word("medium") == "twisted-pair";
        if (Medium is "DAC" or "CAT6A")
            return sheet["medium"] is not null && isPair == (Medium == "CAT6A") ? sheet.Length("reach")?.Value : null;
        if (Medium is { } name && Library.Fibre(name) is { } fibre) return sheet.Length("reach-" + fibre.LimitColumn)?.Value;
        var reaches = ReachFields.Select(sheet.Length).OfType<Known<Length>>().Select(l => l.Value).ToList();
        return reaches.Count == 0 ? null : reaches.Max();
    }
}
