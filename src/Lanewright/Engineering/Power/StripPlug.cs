using Lanewright.Model.Power;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Power;

/// <summary>A device plugged into a strip.</summary>
/// <param name="Use">The device.</param>
/// <param name="Section">The phase, or pair of phases, of its outlet, from zero.</param>
public sealed record StripPlug(StripUse Use, int Section)
{
    /// <summary>What it draws there while all its feeds are up.</summary>
    public Watts Drawn => Watts.From(Use.Watts.Value / Use.Feeds.Length);

    /// <summary>What it draws there when another feed is lost.</summary>
    public Watts DrawnWithout(PowerFeed lost) =>
        Use.Feeds.Contains(lost) ? Watts.From(Use.Watts.Value / (Use.Feeds.Length - 1)) : Drawn;
}
