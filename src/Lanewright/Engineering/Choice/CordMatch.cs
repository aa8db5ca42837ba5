using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Choice;

/// <summary>Finds the cord that joins two openings.</summary>
internal static class CordMatch
{
    /// <summary>The cheapest cord that fits, or null.</summary>
    /// <param name="cords">Cords to choose from.</param>
    /// <param name="fibre">Class of fibre.</param>
    /// <param name="near">Opening with all lanes.</param>
    /// <param name="far">Opening of each leg.</param>
    /// <param name="legs">Legs.</param>
    public static CordModel? Find(IEnumerable<CordModel> cords, string fibre, ModuleOpening near, ModuleOpening far, int legs) =>
        cords
            .Where(c => c.Fibre == fibre && c.Legs == legs && Fits(c, near, far))
            .OrderBy(c => c.Price)
            .ThenBy(c => c.Name, StringComparer.Ordinal)
            .FirstOrDefault();

    /// <summary>Whether connectors and polish of both ends fit, either way round for a straight cord.</summary>
    public static bool Fits(CordModel cord, ModuleOpening near, ModuleOpening far) =>
        (FitsOneWay(cord, near, far) || (cord.Legs == 1 && FitsOneWay(cord, far, near)));

    /// <summary>Whether the connectors fit, whatever the polish.</summary>
    public static bool ConnectorsFit(CordModel cord, ModuleOpening near, ModuleOpening far) =>
        (cord.Near == near.Connector && cord.Far == far.Connector)
        || (cord.Legs == 1 && cord.Near == far.Connector && cord.Far == near.Connector);

    /// <summary>An angled end mates with an angled one only; a flat opening takes any flat end.</summary>
    public static bool PolishFits(string cord, string opening) =>
        opening.Length == 0 || cord.Length == 0 || (cord == "APC") == (opening == "APC");

    private static bool FitsOneWay(CordModel cord, ModuleOpening near, ModuleOpening far) =>
        cord.Near == near.Connector && cord.Far == far.Connector
        && PolishFits(cord.PolishNear, near.Polish) && PolishFits(cord.PolishFar, far.Polish);
}
