using System.Collections.Immutable;
using Lanewright.Engineering.Choice;

namespace Lanewright.Deliverables.Drawings;

/// <summary>One way of making links, and the classes made in it: what a pair of drawings stands for.</summary>
/// <param name="Members">The classes, first one first.</param>
public sealed record LinkWay(ImmutableArray<WayMember> Members)
{
    /// <summary>Its identifier: that of its first class.</summary>
    public string Name => Members[0].Name;

    /// <summary>The class that stands for all.</summary>
    public LinkClass Class => Members[0].Choice.Class;

    /// <summary>How its links are made.</summary>
    public Solution Solution => Members[0].Solution;

    /// <summary>Links made in it.</summary>
    public long Links => Members.Sum(m => (long)m.Links);

    /// <summary>Ports of the split cage that lead anywhere, in the cage where most do; 1 where none is split.</summary>
    public int Used => Members.Max(m => m.Used);

    /// <summary>Names of the sets its links come from.</summary>
    public ImmutableArray<string> Sets => [.. Members.Select(m => m.Choice.Class.Statement.Name).Distinct()];
}
