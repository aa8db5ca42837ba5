namespace Lanewright.Engineering.Pathways;

/// <summary>What circles come to rest in: the walls of a tray or of a duct.</summary>
internal interface ISectionWalls
{
    /// <summary>Where the first circle of a radius may lie.</summary>
    IEnumerable<(double X, double Y)> First(double radius);

    /// <summary>Where a circle of a radius touches a wall and another circle.</summary>
    IEnumerable<(double X, double Y)> Beside((double X, double Y, double R) circle, double radius);

    /// <summary>Whether a circle in a place is inside the walls.</summary>
    bool Holds((double X, double Y) place, double radius);
}
