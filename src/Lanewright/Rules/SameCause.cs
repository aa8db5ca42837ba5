using System.Collections.Frozen;
using System.Collections.Immutable;
using Lanewright.Engineering.Links;

namespace Lanewright.Rules;

/// <summary>Keeps one cause from being reported many times: where a comparison fails because another one has failed already, only
/// the first is spoken of. A module that does not go into the cage has no power, no lanes and no light to complain about.</summary>
internal static class SameCause
{
    private static readonly ImmutableArray<string> Channel =
    [
        CheckNames.ChannelLoss, CheckNames.PowerBudget, CheckNames.Reach, CheckNames.MinimumLength, CheckNames.DispersionPositive,
        CheckNames.DispersionNegative, CheckNames.Dgd, CheckNames.Overload, CheckNames.Reflectance, CheckNames.ReturnLoss,
        CheckNames.Interference,
    ];

    private static readonly ImmutableArray<string> Light =
    [
        CheckNames.WireFec, CheckNames.HostFec, CheckNames.Connector, CheckNames.Polish, CheckNames.Pins, CheckNames.FanOut,
        CheckNames.CassetteFit, CheckNames.Polarity, .. Channel,
    ];

    private static readonly ImmutableArray<string> Media =
    [
        CheckNames.FibreKind, CheckNames.MediaLanes, CheckNames.LaneBaud, CheckNames.LaneModulation, CheckNames.WavelengthPlan, .. Light,
    ];

    /// <summary>What each failing comparison makes pointless to speak of. Light that destroys a receiver is never pointless: ends that
    /// do not understand each other are plugged together all the same.</summary>
    private static readonly FrozenDictionary<string, ImmutableArray<string>> Consequences = new Dictionary<string, ImmutableArray<string>>
    {
        [CheckNames.ModuleFit] =
        [
            CheckNames.Adapter, CheckNames.ModulePower, CheckNames.PowerClass, CheckNames.HighPower, CheckNames.PortMode,
            CheckNames.HostInterface,
            CheckNames.SharedFibre, CheckNames.Damage, .. Media,
        ],
        [CheckNames.Adapter] = [CheckNames.PortMode, CheckNames.HostInterface],
        [CheckNames.SharedFibre] = [CheckNames.HostInterface, .. Media],
        [CheckNames.PortMode] = [CheckNames.HostInterface, .. Media],
        [CheckNames.HostInterface] = Media,
        [CheckNames.Gearbox] = [CheckNames.HostInterface, CheckNames.SharedFibre, .. Media],
        [CheckNames.ModuleFec] = [CheckNames.HostFec],
        [CheckNames.FibreKind] = Light,
        [CheckNames.MediaLanes] = Light,
        [CheckNames.LaneBaud] = Light,
        [CheckNames.LaneModulation] = Light,
        [CheckNames.WavelengthPlan] = Light,
        [CheckNames.Connector] = [CheckNames.Polish, CheckNames.Pins],
        [CheckNames.CassetteFit] = [CheckNames.Polarity],
        [CheckNames.ChannelLoss] = [CheckNames.PowerBudget],
        [CheckNames.Damage] = [CheckNames.Overload],
        [CheckNames.CopperLoss] = [CheckNames.CopperPractice],
        [CheckNames.Reach] =
        [
            CheckNames.DispersionPositive, CheckNames.DispersionNegative, CheckNames.Dgd,
            CheckNames.CopperLoss, CheckNames.CopperPractice,
        ],
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Whether a way to make links fails by its trunks alone: of those another rule speaks, once for all links through
    /// them.</summary>
    public static bool IsOfTrunks(ImmutableArray<Check> checks) => Spoken(checks)
        .Where(c => c.Verdict == Verdict.Fail && !c.IsAdvice)
        .All(c => c.Name is CheckNames.CassetteFit or CheckNames.Polarity);

    /// <summary>The comparisons to speak of: all that pass, and of those that do not, the ones with a cause of their own.</summary>
    public static ImmutableArray<Check> Spoken(ImmutableArray<Check> checks)
    {
        var silenced = new HashSet<string>(StringComparer.Ordinal);
        foreach (var check in checks.Where(c => c.Verdict == Verdict.Fail && !c.IsAdvice))
            if (Consequences.TryGetValue(check.Name, out var names)) silenced.UnionWith(names);
        if (silenced.Count == 0) return checks;
        return [.. checks.Where(c => !silenced.Contains(c.Name))];
    }
}
