using System.Collections.Immutable;
using Lanewright.Model.Demands;
using Lanewright.Notation;
using Lanewright.Quantities;

namespace Lanewright.Model.Binding;

/// <summary>What a plan file may say of traffic and of failures.</summary>
public static class DemandLanguage
{
    /// <summary>The name of the network that links and demands belong to when they name none.</summary>
    public const string MainNetwork = "main";

    private static readonly ScalarShape PerYear =
        new("a number of failures in a year such as '0.02'", t => Numerals.TryReal(t, out var v) && v is >= 0 and <= 1e6)
        {
            Pattern = @"^[-+]?[0-9]*\.?[0-9]+([eE][-+]?[0-9]+)?$",
            MayBeNumber = true,
        };

    /// <summary>Kinds of demand by their names.</summary>
    public static ImmutableArray<(string Name, DemandKind Kind)> Kinds { get; } =
    [
        ("spread", DemandKind.Spread), ("all-to-all", DemandKind.AllToAll), ("permutation", DemandKind.Permutation),
        ("incast", DemandKind.Incast), ("hose", DemandKind.Hose),
    ];

    /// <summary>Ways to split traffic by their names.</summary>
    public static ImmutableArray<(string Name, TrafficSplit Split)> Splits { get; } =
        [("per-hop", TrafficSplit.PerHop), ("path-weighted", TrafficSplit.PathWeighted), ("ideal", TrafficSplit.Ideal)];

    /// <summary>What can fail, by name.</summary>
    public static ImmutableArray<(string Name, FailingPart Part)> Parts { get; } =
    [
        ("link", FailingPart.Link), ("module", FailingPart.Module), ("switch", FailingPart.Switch), ("cable", FailingPart.Cable),
        ("rack", FailingPart.Rack), ("feed", FailingPart.Feed), ("tray", FailingPart.Tray),
        ("trunk", FailingPart.Trunk), ("panel", FailingPart.Panel), ("route", FailingPart.Route),
        ("host", FailingPart.Host), ("card", FailingPart.Card), ("cassette", FailingPart.Cassette),
    ];

    /// <summary>Traffic to carry.</summary>
    public static MapShape Demand { get; } = new("a demand",
    [
        new("kind", Shapes.OneOf([.. Kinds.Select(k => k.Name)]), "who sends to whom") { Otherwise = "spread" },
        new("from", new ListShape(Shapes.Text), "spread, incast: hosts that send"),
        new("to", new ListShape(Shapes.Text), "spread: hosts that receive, evenly over their ports; incast: the one that does"),
        new("among", new ListShape(Shapes.Text), "all-to-all, permutation, hose: hosts that send among one another"),
        new("rate", Shapes.Rate, "what each sending host sends") { Otherwise = "what its ports carry together" },
        new("flows", Shapes.Whole(1, 1024), "few large flows of each sending host at a time, for collisions")
        {
            Otherwise = "many small ones",
        },
        new("network", Shapes.Text, "the network that carries it, as links name it") { Otherwise = MainNetwork },
        new("with", new ListShape(Shapes.Text), "other demands that run at the same time") { Otherwise = "none" },
    ]);

    /// <summary>How often things fail.</summary>
    public static MapShape FailureRate { get; } = new("a failure rate",
    [
        new("of", Shapes.OneOf([.. Parts.Select(p => p.Name)]), "what fails") { IsRequired = true },
        new("model", Shapes.Text, "the one model of it that is meant, by its name in the catalogue")
        {
            Otherwise = "all models without a rate of their own",
        },
        new("per-year", PerYear, "failures of one of them in a year, on average") { Otherwise = "from fit or mtbf" },
        new("fit", Shapes.Amount, "failures of one of them in a thousand million hours") { Otherwise = "from per-year or mtbf" },
        new("mtbf", Shapes.Life, "mean time between failures of one of them") { Otherwise = "from per-year or fit" },
        new("repair", Shapes.Repair, "from the failure until it works again, on average") { IsRequired = true },
        new("source", Shapes.Text, "where the rate comes from, for the table of spares") { Otherwise = "not told" },
    ]);
}
