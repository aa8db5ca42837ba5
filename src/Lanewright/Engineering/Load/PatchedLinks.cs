using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Plant;
using Lanewright.Model;

namespace Lanewright.Engineering.Load;

/// <summary>Which trunks and panels links are patched through, and between which places their cables lie.</summary>
internal sealed class PatchedLinks
{
    private readonly Plan plan;
    private readonly LinkDesign design;
    private readonly PlantBook? book;

    private PatchedLinks(Plan plan, LinkDesign design)
    {
        this.plan = plan;
        this.design = design;
        book = plan.Trunks.IsEmpty ? null : PlantBook.Of(plan, design);
    }

    /// <summary>The links of a design.</summary>
    public static PatchedLinks Of(Plan plan, LinkDesign design) => new(plan, design);

    /// <summary>The trunks a link goes through, in order; none where it is not patched, or where no port is left for it.</summary>
    public IEnumerable<TrunkPatch> Of(int link) =>
        book is null ? [] : book.PatchesOf(link).Where(patch => patch.IsThere);

    /// <summary>The two devices or panels each cable, cord or trunk of a link joins, in order.</summary>
    public IEnumerable<(int From, int To)> Legs(int link)
    {
        var at = plan.Links.FromDevice(link);
        foreach (var patch in Of(link))
        {
            yield return (at, patch.NearPanel);
            yield return (patch.NearPanel, patch.FarPanel);
            at = patch.FarPanel;
        }
        yield return (at, plan.Links.ToDevice(link));
    }

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
