using System.Collections.Immutable;
using Lanewright.Deliverables.Json;
using Lanewright.Deliverables.Tables;
using Lanewright.Rules;

namespace Lanewright.Deliverables;

/// <summary>All documents of a judged.</summary>
public static class DeliverySet
{
    /// <summary>The documents, each independent of the others.</summary>
    public static ImmutableArray<Deliverable> Of(JudgedPlan judged)
    {
        var set = ImmutableArray.CreateBuilder<Deliverable>();
        set.Add(new Deliverable("findings.json", stream => FindingsJson.Write(judged, stream)));
        if (judged.Design is null) return set.ToImmutable();
        set.Add(Csv(PartsView.Of(judged)));
        set.Add(Csv(PortsView.Of(judged)));
        set.Add(Csv(CablesView.Of(judged)));
        set.Add(new Deliverable("links.json", stream => LinksJson.Write(judged, stream)));
        return set.ToImmutable();
    }

    private static Deliverable Csv(TableView table) => new(table.Name + ".csv", stream => CsvWriter.Write(table, stream));
}
