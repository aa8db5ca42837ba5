using System.Collections.Immutable;

namespace Lanewright.Model.Catalogues;

/// <summary>Everything that can be bought, by name. Names are unique over all kinds.</summary>
public sealed class Catalogue
{
    private readonly Dictionary<string, ICatalogueItem> byName = new(StringComparer.Ordinal);
    private readonly ImmutableHashSet<string> faulty;

    /// <summary>Takes the items; a later one replaces an earlier one of the same name.</summary>
    /// <param name="items">The items.</param>
    /// <param name="faulty">Names of items that are described and could not be made; no earlier item of the name stands for it.</param>
    public Catalogue(IEnumerable<ICatalogueItem> items, ImmutableHashSet<string>? faulty = null)
    {
        this.faulty = faulty ?? [];
        foreach (var item in items)
            if (!this.faulty.Contains(item.Name)) byName[item.Name] = item;
        var ordered = byName.Values.OrderBy(i => i.Name, Text.NaturalOrder.Instance).ToList();
        Items = [.. ordered];
        Devices = [.. ordered.OfType<DeviceModel>()];
        Cards = [.. ordered.OfType<CardModel>()];
        Modules = [.. ordered.OfType<ModuleModel>()];
        Assemblies = [.. ordered.OfType<AssemblyModel>()];
        Cords = [.. ordered.OfType<CordModel>()];
        Sundries = [.. ordered.OfType<SundryModel>()];
    }

    /// <summary>All items in natural order of their names.</summary>
    public ImmutableArray<ICatalogueItem> Items { get; }

    /// <summary>Devices.</summary>
    public ImmutableArray<DeviceModel> Devices { get; }

    /// <summary>Cards.</summary>
    public ImmutableArray<CardModel> Cards { get; }

    /// <summary>Modules.</summary>
    public ImmutableArray<ModuleModel> Modules { get; }

    /// <summary>Cable assemblies.</summary>
    public ImmutableArray<AssemblyModel> Assemblies { get; }

    /// <summary>Cords.</summary>
    public ImmutableArray<CordModel> Cords { get; }

    /// <summary>Small parts.</summary>
    public ImmutableArray<SundryModel> Sundries { get; }

    /// <summary>An item of a kind by name, or null.</summary>
    public T? Find<T>(string name)
        where T : class, ICatalogueItem => byName.GetValueOrDefault(name) as T;

    /// <summary>Whether an item of a name is described and could not be made.</summary>
    public bool IsFaulty(string name) => faulty.Contains(name);

    /// <summary>The names of a kind, for a did-you-mean.</summary>
    public IEnumerable<string> Names<T>()
        where T : class, ICatalogueItem => Items.OfType<T>().Select(i => i.Name);

    /// <summary>This catalogue with more items; one of the same name is replaced.</summary>
    /// <param name="more">The items.</param>
    /// <param name="unmade">Names of items that are described and could not be made.</param>
    public Catalogue With(IEnumerable<ICatalogueItem> more, IEnumerable<string> unmade) => new([.. Items, .. more], [.. faulty, .. unmade]);
}
