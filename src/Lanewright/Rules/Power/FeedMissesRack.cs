using Lanewright.Rules.Space;

namespace Lanewright.Rules.Power;

/// <summary>Devices that name a feed which does not lead to their rack.</summary>
internal sealed class FeedMissesRack() : Rule("LW4414", nameof(FeedMissesRack))
{
    /// <inheritdoc/>
    public override void Judge(Judgement judgement)
    {
        var devices = judgement.Plan.Devices;
        var reaches = judgement.Plan.Power.ToDictionary(f => f.Name, f => f.Racks.ToHashSet());
        if (reaches.Count == 0) return;
        var missed =
            from rack in judgement.Racks.Value.Racks
            from @group in rack.Devices.Select(devices.Group).Distinct()
            from feed in @group.Feeds
            // A feed that is described and could not be read has been told already.
            where reaches.TryGetValue(feed, out var racks) && !racks.Contains(rack.Rack.Index)
            group rack by (Group: @group, Feed: feed);
        foreach (var racks in missed)
        {
            var (group, feed) = racks.Key;
            judgement.Add(this, group.Span,
                $"'{group.Name}' draws from feed '{feed}', which has no strip in "
                + $"{RackPlaces.WithMore(racks.First().Rack.Name, racks.Count())}: "
                + "the supply meant for it stays dark; add the rack to the feed's 'racks', or name the feeds that lead there",
                $"{group.Name}/{feed}", racks.Count());
        }
    }
}
