using Lanewright.Engineering.Choice;
using Lanewright.Model;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Engineering.Links;

/// <summary>The chance that a designed link exceeds its loss limit, given the grade of the plan's connectors.</summary>
public static class LossExceedance
{
    /// <summary>The chance, or null when no grade is stated or the link has no loss limit.</summary>
    public static double? Of(Policy policy, StandardsLibrary standards, Solution solution)
    {
        if (standards.Grade(policy.ConnectionGrade) is not { } grade) return null;
        if (solution.Channel is not { Connections: > 0, MeasuredLoss: null } channel || solution.Loss is not { } loss) return null;
        var check = solution.Checks.FirstOrDefault(c => c.Name == CheckNames.ChannelLoss);
        if (check?.Limit is not { } limit) return null;
        var withoutConnections = loss.Maximum - (channel.ConnectionLoss.Value * channel.Connections);
        return LossStatistics.Of(grade).ChanceAbove(Decibels.From(limit) - withoutConnections, channel.Connections);
    }
}
