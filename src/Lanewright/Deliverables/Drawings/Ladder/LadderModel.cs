using System.Collections.Immutable;

namespace Lanewright.Deliverables.Drawings.Ladder;

/// <summary>Everything a loss ladder shows, before anything has a place on the sheet.</summary>
internal sealed record LadderModel
{
    /// <summary>The level it starts from: dBm, or 0 where the launch is not known.</summary>
    public required double Start { get; init; }

    /// <summary>Whether levels are in dBm rather than dB against the start.</summary>
    public required bool IsAbsolute { get; init; }

    /// <summary>The way down.</summary>
    public required ImmutableArray<LadderStep> Steps { get; init; }

    /// <summary>The whole loss, as the comparison has it.</summary>
    public required double Loss { get; init; }

    /// <summary>The limits.</summary>
    public required ImmutableArray<LadderLimit> Limits { get; init; }

    /// <summary>The brightest case; null when it is not known.</summary>
    public LadderTop? Top { get; init; }

    /// <summary>The table.</summary>
    public required ImmutableArray<LadderRow> Rows { get; init; }

    /// <summary>What a reader must know beside it.</summary>
    public required ImmutableArray<string> Notes { get; init; }

    /// <summary>What stands at the start and at the end.</summary>
    public required (string Start, string End) Ends { get; init; }
}
