using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Looks names up and reports those that nothing has.</summary>
internal static class Names
{
    /// <summary>A catalogue item, after reporting when it is missing. One that is described and could not be made has been reported where
    /// it stands.</summary>
    public static T? Item<T>(Catalogue catalogue, string what, string name, SourceSpan span, FindingSink findings)
        where T : class, ICatalogueItem =>
        catalogue.IsFaulty(name) ? null : Require(catalogue.Find<T>(name), what, name, catalogue.Names<T>(), span, findings);

    /// <summary>The thing found, after reporting when it is missing.</summary>
    public static T? Require<T>(T? found, string what, string name, IEnumerable<string> known, SourceSpan span, FindingSink findings)
        where T : class
    {
        if (found is not null) return found;
        var near = findings.IsFullOf(ModelFindings.NameUnknown) ? "" : Spelling.DidYouMean(name, known);
        findings.Add(ModelFindings.NameUnknown, span, $"no {what} is called '{name}'{near}");
        return null;
    }
}
