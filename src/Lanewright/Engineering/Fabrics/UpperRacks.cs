using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Counts the racks that upper tiers fill at the least, before they are placed: a design that needs more than there are need not
/// be.</summary>
internal sealed class UpperRacks(FabricDemand demand, SwitchDraw draw)
{
    private readonly int racks = demand.Hall.SpineRacks.Length;
    private readonly int units = demand.Hall.SpineRacks.Select(r => r.Type.Units).DefaultIfEmpty(0).Max();

    private WantedFabric Wanted => demand.Wanted;

    /// <summary>That the racks do not take all upper switches of a design; empty when they may.</summary>
    public string FaultOf(FabricDesign design)
    {
        if (design.Upper is not { } upper) return "";
        var (upperWatts, coreWatts) = draw.OfUppers(design);
        var inRack = InRack(upper.Build, upperWatts);
        if (design.Core is not { } core)
            return Racks((long)design.Planes * upper.Count, inRack) > racks ? TooFew(upper.Build, upper.Count) : "";
        var (uppers, cores) = ((long)new PodPlan(demand, design).Count * upper.Count, (long)upper.Count * core.Count);
        var coresInRack = InRack(core.Build, coreWatts);
        if (Racks(design.Planes * cores, coresInRack) > racks) return TooFew(core.Build, cores);
        // Cores have racks to themselves; of several planes the pods of one may leave room for the cores of the next.
        var needed = design.Planes == 1
            ? Racks(cores, coresInRack) + Racks(uppers, inRack)
            : Math.Max(Racks(design.Planes * uppers, inRack), Racks(design.Planes * (uppers + cores), Math.Max(inRack, coresInRack)));
        return needed > racks ? TooFew(upper.Build, uppers) : "";
    }

    /// <summary>The most that one rack holds of a switch that draws so much.</summary>
    private int InRack(SwitchBuild build, double watts)
    {
        var most = (double)(units / Math.Max(1, build.Units));
        if (Wanted.RackPower is { } power && watts > 0) most = Math.Min(most, Whole(power.Value / watts));
        if (Wanted.RackWeight is { } mass && build.Weight > 0) most = Math.Min(most, Whole(mass.Kilograms / build.Weight));
        return (int)most;

        // A hair below a whole number counts as that.
        static double Whole(double quotient) => Math.Floor(Math.Round(quotient, StateCounter.Places));
    }

    private static long Racks(long switches, int inRack) => inRack <= 0 ? long.MaxValue / 2 : (switches + inRack - 1) / inRack;

    private static string TooFew(SwitchBuild build, long switches) =>
        $"the racks kept for upper tiers do not take {switches} x {build.Name}";
}
