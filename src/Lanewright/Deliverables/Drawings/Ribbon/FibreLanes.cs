using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>Which lanes of an interface type share a fibre.</summary>
internal static class FibreLanes
{
    /// <summary>The lanes on the fibre by which a pair leaves and on the one by which it comes back.</summary>
    /// <param name="type">The type.</param>
    /// <param name="pair">Which pair of fibres of the port, from 0.</param>
    /// <param name="port">Which port of the cage.</param>
    public static (ImmutableArray<MediaLane> Leaving, ImmutableArray<MediaLane> Coming) Of(InterfaceType type, int pair, int port)
    {
        if (type.IsBidirectional) return BothWays(type, pair, port);
        var each = Math.Max(1, type.WavelengthsPerFibre);
        var leaving = ImmutableArray.CreateBuilder<MediaLane>(each);
        var coming = ImmutableArray.CreateBuilder<MediaLane>(each);
        for (var i = 0; i < each; i++)
        {
            var note = Wavelengths(type, i);
            var number = (port * type.MediaLanes) + (pair * each) + i + 1;
            leaving.Add(new MediaLane(number, true, port, note));
            coming.Add(new MediaLane(number, false, port, note));
        }
        return (leaving.ToImmutable(), coming.ToImmutable());
    }

    /// <summary>One wavelength out and another in on each fibre; on the fibre opposite they change places.</summary>
    private static (ImmutableArray<MediaLane>, ImmutableArray<MediaLane>) BothWays(InterfaceType type, int pair, int port)
    {
        var first = (port * type.MediaLanes) + pair + 1;
        var second = first + type.FibrePairs;
        return (
            [new MediaLane(first, true, port, Wavelengths(type, 0)), new MediaLane(second, false, port, Wavelengths(type, 1))],
            [new MediaLane(first, false, port, Wavelengths(type, 0)), new MediaLane(second, true, port, Wavelengths(type, 1))]);
    }

    /// <summary>The window of a lane; a type with one window has it on every lane.</summary>
    private static string Wavelengths(InterfaceType type, int index)
    {
        if (type.Lanes.IsEmpty) return type.Sheet.Word("band") is { Length: > 0 } band ? band : "tunable";
        var window = type.Lanes[Math.Min(index, type.Lanes.Length - 1)];
        return Numerals.Plain(window.Shortest.Nanometres) + "-" + Numerals.Plain(window.Longest.Nanometres);
    }
}
