using Lanewright.Engineering.Load;
using Lanewright.Findings;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Rules.Fabric;

/// <summary>Switches of a tier that take more from below than the plan wants for what they can pass on.</summary>
internal sealed class TierOversubscribed() : Rule("LW3114", nameof(TierOversubscribed), Severity.Warning)
{
    /// <inheritdoc/>
    public override bool NeedsWholePlan => true;

    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var (devices, wanted, ratios) = (judgement.Plan.Devices, judgement.Plan.Wanted, judgement.Plan.Policy.Oversubscription);
        if (wanted is not null) Judge(judgement, IsAskedAbout, tier => wanted.OversubscriptionOf(tier - 1));
        if (!ratios.IsEmpty) Judge(judgement, d => !IsAskedAbout(d), tier => Ratio.OfTier(ratios, tier - 1) ?? Ratio.One);

        bool IsAskedAbout(int device) => wanted?.Concerns(devices.Rack(device)) == true;
    }

    private void Judge(Judgement judgement, Func<int, bool> isMeant, Func<int, Ratio> wanted)
    {
        var devices = judgement.Plan.Devices;
        foreach (var tier in TierOversubscription.Of(judgement.Load.Networks[0], isMeant))
        {
            var most = wanted(tier.Tier);
            if (!tier.Exceeds(most)) continue;
            var name = devices.Name(tier.Device);
            judgement.Add(this, judgement.Load.Networks[0].Statement(judgement.Load.Networks[0].UpLinks(tier.Device)[0]).Span,
                $"{name} takes {tier.Below} from below and passes {tier.Above} on, {Numerals.Plain(Math.Round(tier.Ratio, 2))}:1 as built "
                + $"where {most} is wanted; give it more or faster links up, or put fewer hosts below it",
                name, 1, Kind.Severity, new Evidence("oversubscription", tier.Ratio, most.Value, "", null));
        }
    }
}
