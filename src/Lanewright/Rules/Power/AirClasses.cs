using Lanewright.Model.Places;

namespace Lanewright.Rules.Power;

/// <summary>The environmental class that equipment of a hall is held to.</summary>
internal static class AirClasses
{
    private const string Usual = "A2";

    /// <summary>The class the plan names, or the usual one.</summary>
    public static string Of(Hall hall) => hall.AirClass.Length > 0 ? hall.AirClass : Usual;
}
