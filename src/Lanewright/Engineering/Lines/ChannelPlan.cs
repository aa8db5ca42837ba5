using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Lines;

/// <summary>Which frequencies a line uses.</summary>
/// <param name="Spacing">From channel to channel.</param>
/// <param name="Step">The step of the grid that channels are numbered in.</param>
/// <param name="Channels">Frequencies, lowest first.</param>
public sealed record ChannelPlan(Frequency Spacing, Frequency Step, ImmutableArray<Frequency> Channels)
{
    /// <summary>How wide the comb is.</summary>
    public Frequency Width => Spacing * Channels.Length;

    /// <summary>How many channels a room holds.</summary>
    public static int Room(Frequency room, Frequency spacing) => (int)Math.Floor((room.Hertz / spacing.Hertz) + 1e-9);

    /// <summary>The whole plan of the band: from its highest channel down as far as the room goes.</summary>
    public static ChannelPlan Whole(FrequencyGrid grid, Frequency spacing)
    {
        var count = Room(grid.BandRoom.Value, spacing);
        var all = Enumerable.Range(0, count).Select(k => grid.BandHigh.Value - (spacing * (count - 1 - k)));
        return new ChannelPlan(spacing, grid.StepOf(spacing), [.. all]);
    }

    /// <summary>So many channels from the middle of the whole plan, where amplifiers are best known; null when there is no room.</summary>
    public static ChannelPlan? Middle(FrequencyGrid grid, Frequency spacing, int count)
    {
        var whole = Whole(grid, spacing);
        if (count > whole.Channels.Length) return null;
        var first = (whole.Channels.Length - count) / 2;
        return whole with { Channels = whole.Channels.Slice(first, count) };
    }

    /// <summary>So many channels from a lowest one up; null when the last lies above the band.</summary>
    public static ChannelPlan? From(FrequencyGrid grid, Frequency spacing, Frequency first, int count)
    {
        var all = Enumerable.Range(0, count).Select(k => first + (spacing * k)).ToImmutableArray();
        return first < grid.BandLow.Value || all[^1] > grid.BandHigh.Value ? null : new ChannelPlan(spacing, grid.StepOf(spacing), all);
    }

    /// <summary>The number of a channel on the grid.</summary>
    public int Number(FrequencyGrid grid, int channel) => grid.NumberOf(Channels[channel], Step);
}
