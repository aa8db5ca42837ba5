using Lanewright.Deliverables;
using Lanewright.Model.Binding;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Tests.Deliverables;

/// <summary>The catalogue can be searched, and shows of every item what a plan is judged by.</summary>
public sealed class CatalogueQueryTests
{
    private static readonly CatalogueQuery All = new(StandardsLibrary.Shipped, CatalogueBinder.Shipped);

    [Fact]
    public void EveryItem_IsListedOnceUnderAKindThatAsksForIt()
    {
        Assert.Equal(CatalogueBinder.Shipped.Items.Length, All.Answer().Length);
        Assert.Equal(
            CatalogueBinder.Shipped.Items.Length,
            CatalogueQuery.Kinds.Sum(kind => (All with { Kind = kind }).Answer().Length));
        Assert.All(CatalogueQuery.Kinds, kind => Assert.NotEmpty((All with { Kind = kind }).Answer()));
    }

    [Fact]
    public void EveryItem_ShowsItsPriceAndHowFarItCanBeTrusted() => Assert.All(CatalogueBinder.Shipped.Items, item =>
    {
        var values = CatalogueSheet.Of(item).ToLookup(v => v.Key, v => v.Value);
        Assert.Equal([item.Price.ToString()], values["price"]);
        Assert.Equal(["invented"], values["price mark"]);
        Assert.All(CatalogueSheet.Of(item), v => Assert.NotEmpty(v.Value));
    });

    [Fact]
    public void RateAndFormFactor_FindWhatRunsThere()
    {
        var found = (All with { Rate = BitRate.FromGigabits(400), FormFactor = "QSFP-DD", Kind = "module" }).Answer();
        var expected = CatalogueBinder.Shipped.Modules.Where(m =>
            m.FormFactor.Name == "QSFP-DD" && m.Applications.Any(a => a.Rate == BitRate.FromGigabits(400)));
        Assert.Equal(expected.Select(m => m.Name), found.Select(i => i.Name));
        Assert.Contains(found, i => i.Name == "m-400g-dr4-dd");
    }

    [Fact]
    public void Words_AreLookedForInNamesAndValues()
    {
        Assert.Contains((All with { Find = "MPO-16" }).Answer(), i => i is CordModel);
        Assert.Equal(["m-400g-er8-dd"], (All with { Find = "400gbase-er8" }).Answer().Select(i => i.Name));
        Assert.Empty((All with { Find = "no such words" }).Answer());
    }

    [Fact]
    public void StrongerCages_AreShownByTheirNumbers()
    {
        var cages = CatalogueSheet.Of(CatalogueBinder.Shipped.Find<DeviceModel>("fixed-32x400")!).First(v => v.Key == "cages").Value;
        Assert.Contains("at most 12 W a module; 21 W at numbers 4, 8 and so on", cages, StringComparison.Ordinal);
    }

    [Fact]
    public void CatalogueOfAPlan_HasItsOwnItems()
    {
        var judged = PlanBlock.Compile("""
            lanewright: 1
            catalogue: own.yaml
            # file: own.yaml
            sundries: { att-own: { title: own attenuator, kind: attenuator, value: 4 dB, price: 9 } }
            """);
        var item = Assert.Single((new CatalogueQuery(StandardsLibrary.Shipped, judged.Plan!.Catalogue) { Find = "att-own" }).Answer());
        Assert.Contains(("price mark", "seen"), CatalogueSheet.Of(item));
        Assert.Contains(("stands in", "own.yaml"), CatalogueSheet.Of(item));
    }
}
