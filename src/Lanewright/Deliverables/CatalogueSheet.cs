using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Deliverables;

/// <summary>One catalogue item whole, by the keys a catalogue file would write.</summary>
public static class CatalogueSheet
{
    /// <summary>Its values in the order of the catalogue language; a key with several rows stands several times.</summary>
    public static IEnumerable<(string Key, string Value)> Of(ICatalogueItem item)
    {
        yield return ("kind", PartsView.KindOf(item));
        yield return ("title", item.Title);
        var own = item switch
        {
            DeviceModel device => Device(device),
            CardModel card => Card(card),
            ModuleModel module => Module(module),
            AssemblyModel assembly => Assembly(assembly),
            CordModel cord => Cord(cord),
            SundryModel sundry => Sundry(sundry),
            _ => [],
        };
        foreach (var (key, value) in own)
            if (value.Length > 0) yield return (key, value);
        yield return ("price", item.Price.ToString());
        if (item is CableItem { PricePerMetre: var metre } && metre != Money.Zero) yield return ("price-per-metre", metre.ToString());
        yield return ("price mark", Marks.Name(item.PriceMark));
        yield return ("stands in", item.Span.Path);
    }

    /// <summary>Rates of the ports it runs, slowest first.</summary>
    public static IEnumerable<BitRate> Rates(ICatalogueItem item) => (item switch
    {
        DeviceModel device => device.Banks.SelectMany(b => b.Cage.Modes).Select(m => m.Rate),
        CardModel card => card.Banks.SelectMany(b => b.Cage.Modes).Select(m => m.Rate),
        ModuleModel module => module.Applications.Select(a => a.Rate),
        AssemblyModel assembly => [assembly.LegRate, assembly.LegRate * assembly.Legs],
        _ => [],
    }).Distinct().Order();

    /// <summary>Form factors it is made in or takes.</summary>
    public static IEnumerable<string> FormFactors(ICatalogueItem item) => (item switch
    {
        DeviceModel device => device.Banks.Select(b => b.Cage.FormFactor.Name),
        CardModel card => card.Banks.Select(b => b.Cage.FormFactor.Name),
        ModuleModel module => [module.FormFactor.Name],
        AssemblyModel assembly => [assembly.Near.Name, assembly.Far.Name],
        _ => [],
    }).Distinct();

    /// <summary>What it runs or is made of, in a few words.</summary>
    public static string Summary(ICatalogueItem item) => item switch
    {
        ModuleModel module => string.Join("; ", module.Applications),
        CordModel cord => $"{cord.Fibre}, {Ends(cord)}",
        SundryModel sundry => sundry.Attenuation?.ToString() ?? sundry.Adapts + sundry.Serves,
        DeviceModel { Banks.IsEmpty: true } device => $"{Numerals.Whole(device.Slots)} slots",
        AssemblyModel assembly => assembly.TypeName,
        _ => string.Join(", ", Rates(item)),
    };

    private static IEnumerable<(string Key, string Value)> Device(DeviceModel device)
    {
        foreach (var bank in device.Banks) yield return ("cages", Cages(bank));
        yield return ("slots", device.Slots > 0 ? Numerals.Whole(device.Slots) : "");
        yield return ("units", Numerals.Whole(device.Units));
        yield return ("depth", device.Depth == default ? "" : $"{device.Depth}");
        yield return ("weight", device.Weight == default ? "" : $"{device.Weight}");
        yield return ("typical", $"{device.Typical}");
        yield return ("maximum", $"{device.Maximum}");
        yield return ("module-budget", $"{device.ModuleBudget}");
        yield return ("port-ceiling", device.PortCeiling is { } most ? Numerals.Whole(most) : "");
        yield return ("capacity", device.Capacity.BitsPerSecond > 0 ? $"{device.Capacity}" : "");
        yield return ("airflow", device.Airflow);
    }

    private static IEnumerable<(string Key, string Value)> Card(CardModel card)
    {
        foreach (var bank in card.Banks) yield return ("cages", Cages(bank));
        yield return ("typical", $"{card.Typical}");
        yield return ("maximum", $"{card.Maximum}");
        yield return ("weight", card.Weight == default ? "" : $"{card.Weight}");
        yield return ("port-ceiling", card.PortCeiling is { } most ? Numerals.Whole(most) : "");
    }

    private static IEnumerable<(string Key, string Value)> Module(ModuleModel module)
    {
        yield return ("form-factor", module.FormFactor.Name);
        foreach (var application in module.Applications) yield return ("applications", application.ToString());
        yield return ("power", $"{module.Power}");
        yield return ("power-class", module.PowerClass > 0 ? Numerals.Whole(module.PowerClass) : "");
        yield return ("fec-in-module", module.HasOwnFec ? "yes" : "no");
    }

    private static IEnumerable<(string Key, string Value)> Assembly(AssemblyModel assembly)
    {
        yield return ("near", assembly.Near.Name);
        yield return ("far", assembly.Far.Name);
        yield return ("legs", Numerals.Whole(assembly.Legs));
        yield return ("type", assembly.Type?.Name ?? "");
        yield return ("near-interface", assembly.NearInterface?.Name ?? "");
        yield return ("far-interface", assembly.FarInterface?.Name ?? "");
        yield return ("awg", assembly.Gauge > 0 ? Numerals.Whole(assembly.Gauge) : "");
        yield return ("lengths", Lengths(assembly));
        yield return ("power-near", $"{assembly.NearPower}");
        yield return ("power-far", $"{assembly.FarPower}");
        yield return ("diameter", assembly.Diameter == default ? "" : $"{assembly.Diameter}");
        yield return ("bend-radius", $"{assembly.BendRadius}");
        yield return ("plug", assembly.Plug == default ? "" : $"{assembly.Plug}");
    }

    private static IEnumerable<(string Key, string Value)> Cord(CordModel cord)
    {
        yield return ("fibre", cord.Fibre);
        yield return ("near", $"{cord.Near} {cord.PolishNear}".TrimEnd());
        yield return ("far", $"{cord.Far} {cord.PolishFar}".TrimEnd());
        yield return ("legs", Numerals.Whole(cord.Legs));
        yield return ("lengths", Lengths(cord));
        yield return ("step", $"{cord.Step}");
        yield return ("diameter", cord.Diameter == default ? "" : $"{cord.Diameter}");
    }

    private static IEnumerable<(string Key, string Value)> Sundry(SundryModel sundry)
    {
        yield return ("value", sundry.Attenuation is { } loss ? $"{loss}" : sundry.Adapts + sundry.Serves);
    }

    /// <summary>A row of cages in one line: everything a platform says of them.</summary>
    private static string Cages(CageBank bank)
    {
        var cage = bank.Cage;
        var parts = new List<string>
        {
            $"{Numerals.Whole(bank.Count)} x {cage.FormFactor.Name}",
            $"{Numerals.Whole(cage.Lanes)} lanes at {string.Join(" or ", cage.LaneRates)}",
            "as " + string.Join(", ", cage.Modes),
        };
        if (!cage.NeighbourLost.IsEmpty) parts.Add($"{string.Join(", ", cage.NeighbourLost)} costs the next cage");
        if (cage.PowerLimit is { } limit) parts.Add($"at most {limit} a module");
        if (cage.RaisedLimit is { } raised)
            parts.Add($"{raised} at numbers {Numerals.Whole(cage.RaisedEvery)}, {Numerals.Whole(2 * cage.RaisedEvery)} and so on");
        if (!cage.Fec.IsEmpty) parts.Add("FEC " + string.Join(", ", cage.Fec));
        if (!cage.HasAutonegotiation) parts.Add("no auto-negotiation");
        if (!cage.EnablesHighPower) parts.Add("modules stay in low power");
        if (cage.TakesAdapters) parts.Add("adapters known");
        if (cage.RateGroup > 1) parts.Add($"one rate for each {Numerals.Whole(cage.RateGroup)}");
        return string.Join("; ", parts);
    }

    private static string Ends(CordModel cord) => cord.Legs > 1 ? $"{cord.Near} to {Numerals.Whole(cord.Legs)} x {cord.Far}" : cord.Near;

    private static string Lengths(CableItem cable) => string.Join(", ", cable.Lengths);
}
