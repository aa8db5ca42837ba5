using System.Collections.Immutable;
using Lanewright.Engineering.Links;
using Lanewright.Engineering.Plant;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Choice;

/// <summary>One complete way to make a link: what goes into each cage, what runs between, and every comparison it went through.</summary>
public sealed record Solution
{
    /// <summary>Its name: the parts in short.</summary>
    public required string Name { get; init; }

    /// <summary>What carries the link.</summary>
    public required CableMedium Medium { get; init; }

    /// <summary>The medium by its plan name: DAC, AEC, AOC, OS2, OM4, CAT6A.</summary>
    public required string MediumName { get; init; }

    /// <summary>Module of the first end; null for an assembly.</summary>
    public ModuleModel? FromModule { get; init; }

    /// <summary>What that module runs.</summary>
    public Application? FromApplication { get; init; }

    /// <summary>Module of the second end.</summary>
    public ModuleModel? ToModule { get; init; }

    /// <summary>What that module runs.</summary>
    public Application? ToApplication { get; init; }

    /// <summary>The cable: an assembly or a cord.</summary>
    public required CableItem Cable { get; init; }

    /// <summary>Whether an assembly lies the other way round: its near end at the link's second end.</summary>
    public bool IsTurned { get; init; }

    /// <summary>A second cord, where fan-outs of both ends meet in a coupler, or at the far panel of trunks.</summary>
    public CordModel? FarCord { get; init; }

    /// <summary>Length of the second cord to order.</summary>
    public Length? FarLength { get; init; }

    /// <summary>The trunks between the cords; null where there are none.</summary>
    public TrunkWay? Through { get; init; }

    /// <summary>The cords of that way from the first end to the second, <see cref="Cable"/> being the first of them; empty without
    /// trunks.</summary>
    public ImmutableArray<PatchCord> Patching { get; init; } = [];

    /// <summary>Adapters in the cages, where the plan says that modules sit in them.</summary>
    public ImmutableArray<SundryModel> Adapters { get; init; } = [];

    /// <summary>Length to order.</summary>
    public required Length Length { get; init; }

    /// <summary>Attenuator that has to stand before a receiver; null where none is needed.</summary>
    public SundryModel? Attenuator { get; init; }

    /// <summary>Which receiver it stands before: that of the end <c>from</c>, of the end <c>to</c>, or empty for both.</summary>
    public string AttenuatorEnd { get; init; } = "";

    /// <summary>The channel, for fibre.</summary>
    public Channel? Channel { get; init; }

    /// <summary>Loss of the channel, for fibre.</summary>
    public ChannelLoss? Loss { get; init; }

    /// <summary>All comparisons in their order.</summary>
    public required ImmutableArray<Check> Checks { get; init; }

    /// <summary>Parts it uses.</summary>
    public required ImmutableArray<PartUse> Parts { get; init; }

    /// <summary>Code to set at the first port.</summary>
    public string FromFec { get; init; } = FecSide.None;

    /// <summary>Code to set at the second port.</summary>
    public string ToFec { get; init; } = FecSide.None;

    /// <summary>Whether auto-negotiation runs.</summary>
    public bool Autonegotiates { get; init; }

    /// <summary>Delay in one direction.</summary>
    public required Known<Duration> Latency { get; init; }

    /// <summary>Links one cable carries: legs of a fan-out, or ports of a straight split cage.</summary>
    public int LinksPerCable { get; init; } = 1;

    /// <summary>The interface type, or both where the ends differ.</summary>
    public required string TypeName { get; init; }

    /// <summary>What all comparisons come to.</summary>
    public Verdict Verdict => Links.Checks.Verdict(Checks);

    /// <summary>The weakest mark of the values used.</summary>
    public Mark Mark => Links.Checks.Mark(Checks);

    /// <summary>Power of both ends, in watts for one link.</summary>
    public required Watts Power { get; init; }

    /// <summary>Watts of what sits in the cage of each end.</summary>
    /// <param name="shape">How the cages are split: the end with all lanes sits in the one that is.</param>
    public (double From, double To) WattsIn(FanShape shape) => Cable is not AssemblyModel cable
        ? (FromModule?.Power.Value ?? 0, ToModule?.Power.Value ?? 0)
        : shape == FanShape.ToEnd
            ? (cable.FarPower.Value, cable.NearPower.Value)
            : (cable.NearPower.Value, cable.FarPower.Value);

    /// <summary>Price of one link's share, bought new.</summary>
    public Money Price => Money.FromHundredths(NewPrice(this));

    /// <summary>Price of one link's share in hundredths and parts of them, bought new.</summary>
    public static decimal NewPrice(Solution solution) => solution.PriceWithout(_ => false);

    /// <summary>The same without the parts that cost nothing.</summary>
    public decimal PriceWithout(Func<PartUse, bool> isFree) =>
        Parts.Where(p => !isFree(p)).Sum(p => p.UnitPrice.Hundredths * p.Quantity / p.SharedBy);

    /// <summary>Whether its standard was a draft when its values were taken.</summary>
    public bool IsDraft =>
        FromApplication?.Optical?.IsDraft == true
        || ToApplication?.Optical?.IsDraft == true
        || (Cable as AssemblyModel)?.Type?.IsDraft == true;
}
