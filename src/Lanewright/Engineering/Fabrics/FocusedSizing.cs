using Lanewright.Engineering.Choice;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Wanted;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Answers many like questions: fully over the whole catalogue, or quickly over the switches that have won somewhere. What is
/// found quickly is a guess until it has been asked fully.</summary>
internal sealed class FocusedSizing(FinderContext context)
{
    private readonly Sizing whole = new(context);
    private readonly HashSet<string> focus = new(StringComparer.Ordinal);
    private Sizing? narrow;
    private double gap;

    /// <summary>The widest gap of all winners since it was last asked, as a part of their prices.</summary>
    public double TakeGap()
    {
        var widest = gap;
        gap = 0;
        return widest;
    }

    /// <summary>The cheapest of everything; its switches join those that have won somewhere.</summary>
    public Winner Fully(WantedFabric wanted)
    {
        var answer = whole.Of(wanted);
        var models = answer.Options.Take(2).SelectMany(o => o.Switches).Select(s => s.Model.Name).ToList();
        if (models.Any(m => !focus.Contains(m))) narrow = null;
        focus.UnionWith(models);
        var winner = Winner.Of(answer);
        gap = Math.Max(gap, winner.Gap);
        return winner;
    }

    /// <summary>The cheapest of what has won somewhere.</summary>
    public Winner Quickly(WantedFabric wanted)
    {
        narrow ??= new Sizing(context with { Catalogue = Narrowed() });
        return Winner.Of(narrow.Of(wanted));
    }

    private Catalogue Narrowed() => new(context.Catalogue.Items.Where(i =>
        i is not DeviceModel { Kind: DeviceKind.Switch or DeviceKind.Chassis } || focus.Contains(i.Name)));
}
