using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Pathways;
using Lanewright.Model;

namespace Lanewright.Engineering.Placement;

/// <summary>What the links of devices cost by where the devices stand, in the plan's unit of money.</summary>
public sealed class PlacementCost
{
    private readonly Plan plan;
    private readonly LinkDesign design;
    private readonly LengthPrices prices;
    private readonly Dictionary<(int Template, int Rack, int Unit, int Units, int FarDevice), double> known = [];
    private readonly ILookup<int, int> linksOf;

    /// <summary>Prices the links of a design.</summary>
    public PlacementCost(Plan plan, LinkDesign design, LengthPrices prices)
    {
        (this.plan, this.design, this.prices) = (plan, design, prices);
        linksOf = Enumerable.Range(0, plan.Links.Count)
            .Where(IsPriced)
            .SelectMany(l => new[] { plan.Links.FromDevice(l), plan.Links.ToDevice(l) }, (link, device) => (link, device))
            .ToLookup(e => e.device, e => e.link);
    }

    /// <summary>Links of a device whose length follows from where it stands.</summary>
    public IEnumerable<int> LinksOf(int device) => linksOf[device];

    /// <summary>The device at the other end.</summary>
    public int Far(int link, int device) =>
        plan.Links.FromDevice(link) == device ? plan.Links.ToDevice(link) : plan.Links.FromDevice(link);

    /// <summary>Where a device stands; null when the plan gives it no place.</summary>
    public PlacedAt? Now(int device) =>
        plan.Devices.Rack(device) is { } rack ? new PlacedAt(rack, plan.Devices.Unit(device)) : null;

    /// <summary>What the links of a device to devices that stay would cost if it stood elsewhere; infinite where one of them could not be
    /// made.</summary>
    /// <param name="device">The device.</param>
    /// <param name="at">Where it would stand.</param>
    /// <param name="moved">Devices that do not stay.</param>
    public double Of(int device, PlacedAt at, IReadOnlySet<int> moved)
    {
        var sum = 0.0;
        foreach (var link in linksOf[device])
        {
            var far = Far(link, device);
            if (!moved.Contains(far)) sum += Of(link, device, at, far);
        }
        return sum;
    }

    /// <summary>What links of devices cost beyond the shortest way as the plan has them, because they are kept apart or found no room: it
    /// is taken to stay as it is.</summary>
    /// <param name="devices">Devices with an end of these links.</param>
    public double Detours(IEnumerable<int> devices)
    {
        var (sum, seen) = (0.0, new HashSet<int>());
        foreach (var device in devices)
        {
            foreach (var link in linksOf[device])
            {
                if (design.Laying?.Detours.Ways.GetValueOrDefault(new CableKey(CableKind.Cable, link)) is not { } way) continue;
                var far = Far(link, device);
                if (!seen.Add(link) || Now(device) is not { } at || Now(far) is not { } farAt) continue;
                sum += Priced(link, design.Lengths.Along(way, device, far).Total) - Between(link, device, at, far, farAt);
            }
        }
        return double.IsFinite(sum) ? sum : 0;
    }

    /// <summary>What a link would cost between two places, by the shortest way.</summary>
    public double Between(int link, int device, PlacedAt at, int far, PlacedAt farAt) =>
        Priced(link, design.Lengths.Parts(at.Rack, Height(device, at), farAt.Rack, Height(far, farAt), Side(link))?.Total);

    private double Priced(int link, Quantities.Length? length) =>
        length is { } metres && prices.Of(prices.TemplateOf(link), metres) is { } hundredths
            ? (double)hundredths / HundredthsInUnit
            : double.PositiveInfinity;

    private double Of(int link, int device, PlacedAt at, int far)
    {
        if (Now(far) is not { } there) return 0;
        var key = (prices.TemplateOf(link), at.Rack.Index, at.Unit, plan.Devices.Group(device).Model.Units, far);
        if (known.TryGetValue(key, out var found)) return found;
        return known[key] = Between(link, device, at, far, there);
    }

    private Quantities.Length Height(int device, PlacedAt at) =>
        design.Lengths.Height(at.Rack, at.Unit, plan.Devices.Group(device).Model.Units);

    private string Side(int link) => plan.Statements[plan.Links.Statement(link)].Side;

    /// <summary>A link of stated length, or through panels, costs what it costs; existing cable costs nothing.</summary>
    private bool IsPriced(int link)
    {
        var statement = plan.Statements[plan.Links.Statement(link)];
        return statement is { Length: null, Through.IsEmpty: true, IsExisting: false }
            && plan.Devices.RackIndex(plan.Links.FromDevice(link)) >= 0 && plan.Devices.RackIndex(plan.Links.ToDevice(link)) >= 0;
    }

    private const double HundredthsInUnit = 100;
}
