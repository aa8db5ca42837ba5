using System.Collections.Immutable;
using Lanewright.Model.Wanted;
using Lanewright.Notation;
using Lanewright.Quantities;

namespace Lanewright.Model.Binding;

/// <summary>What the section <c>wanted</c> of a plan may say: the fabric that is asked for.</summary>
public static class WantedLanguage
{
    /// <summary>Ports of all hosts together, the last year's growth included: more than any fabric of this trade has.</summary>
    public const int MostPorts = 4_000_000;

    /// <summary>Years a question looks ahead at most.</summary>
    public const int MostYears = 20;

    /// <summary>The most hosts in a rack that can be asked for.</summary>
    public const int MostPerRack = 60;

    private const double MostGrowth = 10;

    /// <summary>A ratio of bandwidth towards hosts to bandwidth towards the next tier.</summary>
    public static ScalarShape OversubscriptionRatio { get; } =
        Shapes.Matching("a ratio such as '3:1', '5:2' or '2.6:1'", t => Model.Wanted.Ratio.TryRead(t, out _),
            @"^\s*[0-9]+(\.[0-9]{1,3})?\s*:\s*[0-9]+(\.[0-9]{1,3})?\s*$");

    /// <summary>Growth, of hosts in a year or of what trunks are laid for; more than the whole is possible.</summary>
    public static ScalarShape Growth { get; } = Shapes.Matching(
        "growth such as '20 %'",
        t => UnitText.TryRead(t, UnitText.Shares, out var v) && v is >= 0 and <= MostGrowth,
        @"^\s*[0-9]*\.?[0-9]+\s*%\s*$");

    /// <summary>A kind of host.</summary>
    public static MapShape Host { get; } = new("a kind of host",
    [
        new("count", Shapes.Whole(1, MostPorts), "how many there are at the start") { IsRequired = true },
        new("rate", Shapes.Rate, "rate of each port") { IsRequired = true },
        new("ports", Shapes.Whole(1, 16), "ports of each into the fabric") { Otherwise = "1" },
        new("per-rack", Shapes.Whole(1, MostPerRack), "how many stand in a rack") { Otherwise = "16" },
        new("model", Shapes.Text, "the device model, by its name in the catalogue") { Otherwise = "the smallest that takes the cards" },
        new("cards", new ListShape(Shapes.Text), "cards in its slots, in slot order; 'NAME x4' for four alike"),
    ]);

    /// <summary>The section.</summary>
    public static MapShape Section { get; } = new("the fabric that is wanted",
    [
        new("hosts", new NamesShape("kinds of host", Host), "what the fabric serves") { IsRequired = true },
        new("growth", Growth, "more hosts each year") { Otherwise = "0 %" },
        new("years", Shapes.Whole(1, MostYears), "years to look ahead, for growth and energy") { Otherwise = "4" },
        new("oversubscription", new ListShape(OversubscriptionRatio), "most bandwidth below a switch against that above, tier by tier")
        {
            Otherwise = "that of the policy, or 1:1; the last stated holds for the tiers above",
        },
        new("survive", Shapes.Whole(0, 16), "switches of any one tier that may be out with the ratio still kept") { Otherwise = "0" },
        new("planes", Shapes.Whole(1, 16), "fabrics side by side; port i of each host goes to plane i") { Otherwise = "1" },
        new("rails", Shapes.Whole(1, 16), "ports of a host that each go to a leaf of their own in a unit") { Otherwise = "1" },
        new("form-factors", new ListShape(Shapes.Text), "cages the switches may have") { Otherwise = "any" },
        new("uplink-rates", new ListShape(Shapes.Rate), "rates that links between switches may have") { Otherwise = "any" },
        new("tiers", Shapes.Whole(1, 3), "most tiers of switches") { Otherwise = "3" },
        new("shapes", new ListShape(Shapes.OneOf(ShapeWords)), "shapes to choose from") { Otherwise = "all" },
        new("rack-units", Shapes.Whole(1, 1_000_000), "rack units for all switches together, after the last year") { Otherwise = "any" },
        new("rack-power", Shapes.Power, "most power of switches in one rack") { Otherwise = "any" },
        new("rack-weight", Shapes.Mass, "most weight of switches in one rack") { Otherwise = "any" },
        new("budget", Shapes.Amount, "most to pay over the years, energy included") { Otherwise = "any" },
        new("energy-price", Shapes.Amount, "price of a kilowatt-hour") { Otherwise = "0: energy is not counted" },
        new("overhead", Shapes.Share, "energy for cooling and conversion on top of what equipment draws")
        {
            Otherwise = "by the policy's pue, else 0 %",
        },
        new("racks", new ListShape(PlaceShapes.Racks), "racks the hosts stand in") { Otherwise = "a standard hall" },
        new("spine-racks", new ListShape(PlaceShapes.Racks), "racks for switches above the leaves") { Otherwise = "in the middle" },
        new("reuse", new ListShape(Shapes.Text), "groups of the plan, or models in stock, that stay and are used first"),
    ]);

    /// <summary>Shapes of fabrics in their order, as plans and flags name them.</summary>
    public static ImmutableArray<string> ShapeWords => [.. FabricShapes.All.Select(FabricShapes.Word)];
}
