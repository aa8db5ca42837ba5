using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Notation;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Turns catalogue trees of devices and cards into models.</summary>
internal sealed class DeviceItemBinder(StandardsLibrary standards, Mark priceMark, FindingSink findings)
{
    /// <summary>A device, or null when it is too faulty to use.</summary>
    public DeviceModel? Device(string name, MapNode map) => !IsPowerInOrder(map) ? null : new()
    {
        Name = name,
        Title = map.Text("title") ?? name,
        Kind = map.Text("kind") switch
        {
            "chassis" => DeviceKind.Chassis,
            "host" => DeviceKind.Host,
            "panel" => DeviceKind.Panel,
            _ => DeviceKind.Switch,
        },
        Banks = Banks(map),
        Slots = map.Whole("slots") ?? 0,
        Units = map.Whole("units") ?? 1,
        Depth = map.Length("depth") ?? default,
        Weight = map.InUnits("weight", UnitText.Masses) is { } kg ? Mass.FromKilograms(kg) : default,
        Typical = map.Watts("typical") ?? default,
        Maximum = map.Watts("maximum") ?? default,
        ModuleBudget = map.Watts("module-budget"),
        PortCeiling = map.Whole("port-ceiling"),
        Capacity = map.Rate("capacity") ?? default,
        Airflow = map.Text("airflow") ?? DeviceModel.FrontToBack,
        Price = map.Real("price") is { } price ? Money.FromUnits(price) : Money.Zero,
        PriceMark = priceMark,
        Span = map.Span,
    };

    /// <summary>A card, or null when it is too faulty to use.</summary>
    public CardModel? Card(string name, MapNode map) => !IsPowerInOrder(map) ? null : new()
    {
        Name = name,
        Title = map.Text("title") ?? name,
        Banks = Banks(map),
        Typical = map.Watts("typical") ?? default,
        Maximum = map.Watts("maximum") ?? default,
        Weight = map.InUnits("weight", UnitText.Masses) is { } kg ? Mass.FromKilograms(kg) : default,
        PortCeiling = map.Whole("port-ceiling"),
        Price = map.Real("price") is { } price ? Money.FromUnits(price) : Money.Zero,
        PriceMark = priceMark,
        Span = map.Span,
    };

    /// <summary>Whether what is drawn at most is no less than what is usual.</summary>
    private bool IsPowerInOrder(MapNode map)
    {
        if (map.Watts("typical") is not { } typical || map.Watts("maximum") is not { } most || typical <= most) return true;
        findings.Add(ModelFindings.CatalogueFault, map.SpanOf("typical"),
            $"a usual {typical} is more than the most, {most}; put 'typical' or 'maximum' right");
        return false;
    }

    private ImmutableArray<CageBank> Banks(MapNode map)
    {
        var banks = ImmutableArray.CreateBuilder<CageBank>();
        var nodes = map["cages"] switch { ListNode list => list.Items.OfType<MapNode>(), MapNode one => [one], _ => [] };
        foreach (var node in nodes)
            if (Cage(node) is { } cage) banks.Add(new CageBank(node.Whole("count") ?? 1, cage));
        return banks.ToImmutable();
    }

    private CageModel? Cage(MapNode map)
    {
        // A key that is missing has been reported.
        if (map.Text("form-factor") is not { } name) return null;
        if (standards.FormFactor(name) is not { } formFactor)
        {
            findings.Add(ModelFindings.NameUnknown, map.SpanOf("form-factor"),
                $"no form factor is called '{name}'{Spelling.DidYouMean(name, standards.FormFactors.Select(f => f.Name))}");
            return null;
        }
        var rates = ImmutableArray.CreateBuilder<string>();
        var signals = ImmutableArray.CreateBuilder<LaneSignal>();
        foreach (var rate in map.Texts("lane-rates"))
        {
            if (standards.Signal(rate.Value) is not { } signal)
            {
                findings.Add(ModelFindings.NameUnknown, rate.Span,
                    $"no lane rate is called '{rate.Value}'{Spelling.DidYouMean(rate.Value, standards.SignalNames)}");
                continue;
            }
            rates.Add(rate.Value);
            signals.Add(signal);
        }
        var raised = map.Map("raised-power");
        return new CageModel
        {
            FormFactor = formFactor,
            Lanes = map.Whole("lanes") ?? formFactor.Lanes,
            LaneRates = rates.ToImmutable(),
            Signals = signals.ToImmutable(),
            Modes = Modes(map, "modes"),
            NeighbourLost = Modes(map, "neighbour-lost"),
            PowerLimit = map.Watts("power"),
            RaisedEvery = raised?.Whole("every") ?? 0,
            RaisedLimit = raised?.Watts("limit"),
            Fec = [.. map.Texts("fec").Select(t => t.Value)],
            HasAutonegotiation = map.Switch("autonegotiation") ?? true,
            EnablesHighPower = map.Switch("high-power") ?? true,
            TakesAdapters = map.Switch("adapters") ?? false,
            RateGroup = map.Whole("rate-group") ?? 1,
            Mark = CatalogueFacts.MarkBeside(priceMark),
        };
    }

    private static ImmutableArray<PortMode> Modes(MapNode map, string key)
    {
        var modes = ImmutableArray.CreateBuilder<PortMode>();
        foreach (var text in map.Texts(key))
            if (PortMode.TryRead(text.Value, out var mode)) modes.Add(mode);
        return modes.ToImmutable();
    }
}
