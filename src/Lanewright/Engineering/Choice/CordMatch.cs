using Lanewright.Model.Catalogues;
using Lanewright.Standards;

namespace Lanewright.Engineering.Choice;

/// <summary>Finds the cord that joins two openings.</summary>
internal static class CordMatch
{
    /// <summary>The cheapest cord that fits, or null.</summary>
    /// <param name="standards">What is usual at a connector.</param>
    /// <param name="cords">Cords to choose from.</param>
    /// <param name="fibre">Class of fibre.</param>
    /// <param name="near">Opening with all lanes.</param>
    /// <param name="far">Opening of each leg.</param>
    /// <param name="legs">Legs.</param>
    public static CordModel? Find(
        StandardsLibrary standards, IEnumerable<CordModel> cords, string fibre, ModuleOpening near, ModuleOpening far, int legs) =>
        cords
            .Where(c => c.Fibre == fibre && c.Legs == legs && Mates(standards, c, near, far))
            .OrderBy(c => c.Price)
            .ThenBy(c => c.Name, StringComparer.Ordinal)
            .FirstOrDefault();

    /// <summary>Whether connectors, polish and pins of both ends fit, either way round for a straight cord.</summary>
    private static bool Mates(StandardsLibrary standards, CordModel cord, ModuleOpening near, ModuleOpening far) =>
        MatesOneWay(standards, cord, near, far) || (cord.Legs == 1 && MatesOneWay(standards, cord, far, near));

    private static bool MatesOneWay(StandardsLibrary standards, CordModel cord, ModuleOpening near, ModuleOpening far) =>
        FitsOneWay(cord, near, far)
        && PinsFit(standards, near, cord.PinsNear)
        && PinsFit(standards, far, cord.PinsFar);

    /// <summary>A mating has pins at one side. What is not said of a cord or an opening is as usual there.</summary>
    private static bool PinsFit(StandardsLibrary standards, ModuleOpening opening, string ofCord)
    {
        if (standards.Connector(opening.Connector) is not { } connector || connector["module-pins"] is not { } usual) return true;
        var there = opening.Pins.Length > 0 ? opening.Pins : usual.Value;
        return (ofCord.Length > 0 ? ofCord : connector.Word("cord-pins")) != there;
    }

    /// <summary>Whether connectors and polish of both ends fit, either way round for a straight cord.</summary>
    public static bool Fits(CordModel cord, ModuleOpening near, ModuleOpening far) =>
        (FitsOneWay(cord, near, far) || (cord.Legs == 1 && FitsOneWay(cord, far, near)));

    /// <summary>Whether the connectors fit, whatever the polish.</summary>
    public static bool ConnectorsFit(CordModel cord, ModuleOpening near, ModuleOpening far) =>
        (cord.Near == near.Connector && cord.Far == far.Connector)
        || (cord.Legs == 1 && cord.Near == far.Connector && cord.Far == near.Connector);

    /// <summary>The ends of a cord that do not mate with a module for their pins, in words; empty when both do. A mating has pins at one
    /// side: two pinned ends destroy each other, two without are not aligned.</summary>
    public static string UnfitPins(StandardsLibrary standards, CordModel cord)
    {
        var ends = new[] { (cord.Near, Pins: cord.PinsNear), (cord.Far, Pins: cord.PinsFar) };
        return string.Join(" and ", ends.Select(e => Unfit(standards.Connector(e.Item1), e.Pins)).Where(t => t.Length > 0).Distinct());
    }

    private static string Unfit(FactSheet? connector, string stated)
    {
        if (connector?["module-pins"] is not { } ofModule) return "";
        var ofCord = stated.Length > 0 ? stated : connector.Word("cord-pins");
        return ofCord == ofModule.Value ? $"{connector.Subject} {ofCord} at the cord and {ofModule.Value} at the module" : "";
    }

    /// <summary>An angled end mates with an angled one only; a flat opening takes any flat end.</summary>
    public static bool PolishFits(string cord, string opening) =>
        opening.Length == 0 || cord.Length == 0 || (cord == "APC") == (opening == "APC");

    private static bool FitsOneWay(CordModel cord, ModuleOpening near, ModuleOpening far) =>
        cord.Near == near.Connector && cord.Far == far.Connector
        && PolishFits(cord.PolishNear, near.Polish) && PolishFits(cord.PolishFar, far.Polish);
}
