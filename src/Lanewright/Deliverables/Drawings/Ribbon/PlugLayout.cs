using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Deliverables.Drawings.Ribbon;

/// <summary>The places of a plug and what passes them. Ends face each other: the second end's places run from the last to the first,
/// as a crossed cord turns them, so that a fibre arrives opposite the place it leaves.</summary>
internal sealed class PlugLayout
{
    private const string Duplex = "-duplex";

    private PlugLayout(string name, ImmutableArray<PlugRow> rows, ImmutableArray<int> sends, ImmutableArray<int> hears)
    {
        Name = name;
        Rows = rows;
        Sends = sends;
        Hears = hears;
    }

    /// <summary>The connector.</summary>
    public string Name { get; }

    /// <summary>The connector of one of its plugs: a module of several duplex links has one for each.</summary>
    public string PlugName => IsPairs && char.IsAsciiDigit(Name[0]) ? Name[(Name.IndexOf('x', StringComparison.Ordinal) + 1)..] : Name;

    /// <summary>Its places from top to bottom.</summary>
    public ImmutableArray<PlugRow> Rows { get; }

    /// <summary>The row by which each path leaves this end. A path is a fibre, a conductor pair or a stream inside a sealed
    /// cable.</summary>
    public ImmutableArray<int> Sends { get; }

    /// <summary>The row by which each path comes back.</summary>
    public ImmutableArray<int> Hears { get; }

    /// <summary>Whether the plug has numbered places.</summary>
    public bool IsNumbered => Rows.Any(r => r.Place.Length > 0);

    /// <summary>Whether it is a duplex plug, or several.</summary>
    public bool IsPairs => IsDuplex(Name);

    /// <summary>The plug of an optical module.</summary>
    /// <param name="connector">Its connector.</param>
    /// <param name="type">The interface type of each port.</param>
    /// <param name="ports">How many of them run side by side.</param>
    /// <param name="isFar">Whether it is the second end.</param>
    public static PlugLayout OfOptics(string connector, InterfaceType type, int ports, bool isFar)
    {
        var positions = Positions(connector);
        var pairs = Math.Max(1, type.FibrePairs) * ports;
        if (positions >= pairs * 2) return InOneRow(connector, positions, type, ports, isFar);
        return IsDuplex(connector) ? Pairs(connector, type, ports, isFar) : Unnumbered(connector, type, ports, isFar);
    }

    /// <summary>Paths of a cable with its ends on: all that leave, then all that come.</summary>
    public static PlugLayout OfCable(int ports, int lanes, bool isFar)
    {
        var build = new PlugLayoutBuilder(isFar);
        for (var port = 0; port < ports; port++)
            for (var lane = 0; lane < lanes; lane++)
                {
                var number = (port * lanes) + lane + 1;
                build.Path([new MediaLane(number, true, port)], [new MediaLane(number, false, port)]);
            }
        return build.GroupedByDirection("");
    }

    /// <summary>Four pairs that each carry both directions.</summary>
    public static PlugLayout OfTwistedPair(int pairs)
    {
        var rows = ImmutableArray.CreateBuilder<PlugRow>();
        for (var pair = 1; pair <= pairs; pair++)
            rows.Add(new PlugRow("", [new MediaLane(pair, true, 0), new MediaLane(pair, false, 0)]));
        ImmutableArray<int> all = [.. Enumerable.Range(0, pairs)];
        return new PlugLayout("RJ45", rows.ToImmutable(), all, all);
    }

    /// <summary>A plug of which only the paths are known.</summary>
    internal static PlugLayout Of(string name, ImmutableArray<PlugRow> rows, ImmutableArray<int> sends, ImmutableArray<int> hears) =>
        new(name, rows, sends, hears);

    /// <summary>Places in one row, filled from both ends: what leaves from the first, what comes from the last.</summary>
    private static PlugLayout InOneRow(string connector, int positions, InterfaceType type, int ports, bool isFar)
    {
        var perPort = Math.Max(1, type.FibrePairs);
        var rows = new PlugRow[positions];
        for (var i = 0; i < positions; i++) rows[i] = new PlugRow(Numerals.Whole(i + 1), []);
        var sends = ImmutableArray.CreateBuilder<int>();
        var hears = ImmutableArray.CreateBuilder<int>();
        for (var path = 0; path < perPort * ports; path++)
        {
            var (leaving, coming) = FibreLanes.Of(type, path % perPort, path / perPort);
            rows[path] = rows[path] with { Lanes = leaving };
            rows[positions - 1 - path] = rows[positions - 1 - path] with { Lanes = coming };
            sends.Add(isFar ? positions - 1 - path : path);
            hears.Add(isFar ? path : positions - 1 - path);
        }
        if (isFar) Array.Reverse(rows);
        return new PlugLayout(connector, [.. rows], sends.ToImmutable(), hears.ToImmutable());
    }

    /// <summary>Pair by pair, each with its two fibres.</summary>
    private static PlugLayout Pairs(string connector, InterfaceType type, int ports, bool isFar)
    {
        var build = new PlugLayoutBuilder(isFar);
        var perPort = Math.Max(1, type.FibrePairs);
        for (var path = 0; path < perPort * ports; path++)
        {
            var (leaving, coming) = FibreLanes.Of(type, path % perPort, path / perPort);
            build.Path(leaving, coming);
        }
        return build.PairByPair(connector);
    }

    /// <summary>Fibres in the order of their lanes, for a plug whose places are not tabled here.</summary>
    private static PlugLayout Unnumbered(string connector, InterfaceType type, int ports, bool isFar)
    {
        var build = new PlugLayoutBuilder(isFar);
        var perPort = Math.Max(1, type.FibrePairs);
        for (var path = 0; path < perPort * ports; path++)
        {
            var (leaving, coming) = FibreLanes.Of(type, path % perPort, path / perPort);
            build.Path(leaving, coming);
        }
        return build.GroupedByDirection(connector);
    }

    private static bool IsDuplex(string connector) => connector.EndsWith(Duplex, StringComparison.Ordinal);

    /// <summary>Places of a connector with one row; 0 for any other.</summary>
    private static int Positions(string connector) => connector switch { "MPO-12" => 12, "MPO-16" => 16, _ => 0 };
}
