using Lanewright.Engineering.Choice;
using Lanewright.Model;

namespace Lanewright.Engineering.Plant;

/// <summary>What the links through trunks leave for these: of all of them the type with the least room. A trunk that passes its cabling
/// test may still be too much for it.</summary>
/// <param name="Type">The interface type.</param>
/// <param name="Allowed">What it allows from module to module, in dB.</param>
/// <param name="Channel">What the whole of its channel is reckoned at, in dB.</param>
/// <param name="Trunk">What the trunk alone is reckoned at, the pairs at its panels included: what a tester should read, in dB.</param>
/// <param name="TrunkMost">The most it may show so that the type still has its limit: what is allowed less cords, reserves and other
/// trunks on the way, in dB.</param>
public sealed record TrunkBudget(string Type, double Allowed, double Channel, double Trunk, double TrunkMost)
{
    /// <summary>The budget of trunks; null where no link through them has a limit.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="design">Its design.</param>
    /// <param name="book">Its trunks.</param>
    /// <param name="state">The trunks asked about.</param>
    public static TrunkBudget? Of(Plan plan, LinkDesign design, PlantBook book, TrunkState state) => state.Ways
        .Select(w => CablePath.Of(plan, design, book, w.FirstLink, ""))
        .OfType<CablePath>()
        .Select(p => Of(p, state))
        .OfType<TrunkBudget>()
        .OrderBy(b => b.Allowed - b.Channel)
        .FirstOrDefault();

    private static TrunkBudget? Of(CablePath path, TrunkState state)
    {
        if (path is not { Allowed: { } allowed, Loss: { } loss }) return null;
        var trunk = path.LossOf(path.Patches.ToList().FindIndex(p => p.Trunk.Index == state.Trunk.Index)).Value;
        return new TrunkBudget(path.TypeName, allowed, loss.Value, trunk, allowed - loss.Value + trunk);
    }
}
