using Lanewright.Engineering.Plant;
using Lanewright.Model;

namespace Lanewright.Engineering.Load;

/// <summary>Which trunks and panels links are patched through.</summary>
internal sealed class PatchedLinks
{
    private readonly bool isNone;
    private readonly Lazy<PlantBook> book;

    /// <summary>The links of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="book">Which trunks its links are patched through.</param>
    public PatchedLinks(Plan plan, Lazy<PlantBook> book) => (isNone, this.book) = (plan.Trunks.IsEmpty, book);

    /// <summary>The trunks a link goes through, in order; none where it is not patched, or where no port is left for it.</summary>
    public IEnumerable<TrunkPatch> Of(int link) =>
        isNone ? [] : book.Value.PatchesOf(link).Where(patch => patch.IsThere);

    /// <summary>The links patched at each panel, rising.</summary>
    public SortedDictionary<int, SortedSet<int>> ByPanel(IEnumerable<int> links)
    {
        var panels = new SortedDictionary<int, SortedSet<int>>();
        foreach (var link in links)
        {
            foreach (var panel in Of(link).SelectMany(p => new[] { p.NearPanel, p.FarPanel }))
            {
                if (!panels.TryGetValue(panel, out var patched)) panels[panel] = patched = [];
                patched.Add(link);
            }
        }
        return panels;
    }
}
