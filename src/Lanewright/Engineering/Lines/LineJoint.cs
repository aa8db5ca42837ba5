using System.Collections.Immutable;

namespace Lanewright.Engineering.Lines;

/// <summary>Where one span of a design, or a piece of one, meets the next.</summary>
/// <param name="Site">The site there, or the hut.</param>
/// <param name="From">The span of the plan before it.</param>
/// <param name="To">The span of the plan behind it.</param>
/// <param name="Amplifier">Which in-line amplifier stands there, from 1; 0 for none.</param>
public sealed record LineJoint(string Site, string From, string To, int Amplifier)
{
    /// <summary>Kilometres by which sums of lengths may differ.</summary>
    private const double Near = 1e-6;

    /// <summary>Whether light goes on there unamplified.</summary>
    public bool GoesOn => Amplifier == 0;

    /// <summary>The joints of a route in order.</summary>
    public static ImmutableArray<LineJoint> Of(LineRoute route)
    {
        var pieces = route.Answer.Design.Spans;
        var between = route.Answer.Design.Amplifiers.Count(a => a.IsBetween);
        var joints = ImmutableArray.CreateBuilder<LineJoint>();
        var (at, end, span, amplifier) = (0.0, route.Spans[0].Length.Kilometres, 0, 0);
        for (var piece = 0; piece < pieces.Length - 1; piece++)
        {
            at += pieces[piece].Length.Kilometres;
            var isAtSite = Math.Abs(at - end) < Near;
            var site = isAtSite ? route.Sites[span + 1].Name : $"hut on {route.Spans[span].Name}";
            var (one, other) = (route.Spans[span].Name, route.Spans[isAtSite ? span + 1 : span].Name);
            if (isAtSite) end += route.Spans[++span].Length.Kilometres;
            var isAmplified = amplifier < between && !pieces[piece].GoesOn;
            joints.Add(new LineJoint(site, one, other, isAmplified ? ++amplifier : 0));
        }
        return joints.ToImmutable();
    }
}
