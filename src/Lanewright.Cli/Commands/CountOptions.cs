using System.Collections.Immutable;
using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Cli.Commands;

/// <summary>Counting a fabric from the radix of its switches alone, without a catalogue.</summary>
internal sealed class CountOptions(WantedOptions wanted)
{
    private static readonly ImmutableArray<string> Counted = ["count", "ports", "oversubscription", "tiers", "planes", "rails"];

    private readonly Option<string?> radix = new("--radix") { Description = "count only: ports of a switch, without a catalogue" };
    private readonly Option<string?> breakout = new("--breakout")
    {
        Description = "with --radix: how each port is split, such as 4 or 4x100G",
    };

    private readonly Option<string?> portLimit = new("--port-limit")
    {
        Description = "with --radix: ports the silicon can have, however it is split",
    };

    /// <summary>The flags of counting alone.</summary>
    public IEnumerable<Option> All => [radix, breakout, portLimit];

    /// <summary>Whether counting is asked for.</summary>
    public bool IsAsked(ParseResult parsed)
    {
        if (parsed.GetValue(radix) is not null) return true;
        return parsed.GetValue(breakout) is null && parsed.GetValue(portLimit) is null
            ? false
            : throw new UsageFault("--breakout and --port-limit go with --radix");
    }

    /// <summary>Counts and prints.</summary>
    public int Run(ParseResult parsed, string? plan, bool asJson)
    {
        if (plan is not null) throw new UsageFault("--radix counts without a plan; leave one of the two out");
        if (wanted.Stated(parsed).FirstOrDefault(k => !Counted.Contains(k)) is { } other)
            throw new UsageFault($"{wanted.NameOf(other)} has no meaning beside --radix, which counts without a catalogue");
        var ports = Ports(parsed);
        var ratios = wanted.Values(parsed, "oversubscription").Select(t => Ratio.TryRead(t, out var ratio)
            ? ratio
            : throw new UsageFault($"--oversubscription '{t}' does not read as a ratio; write 3:1")).ToImmutableArray();
        var counts = Counts(parsed, ports, ratios);
        if (asJson) Screen.Document(stream => CountsJson.Write(counts, stream));
        else Screen.Print(["", "count"], counts.Words.Select(c => (IReadOnlyList<string>)[c.Name, c.Text]));
        return ExitCodes.NoErrors;
    }

    private FabricFigures Rails(ParseResult parsed, int ports, int rails, int tiers, ImmutableArray<Ratio> ratios)
    {
        if (!ratios.IsEmpty) throw new UsageFault("rails are counted without oversubscription; leave --oversubscription out");
        if (Whole(parsed, "planes", 1, 64) is > 1) throw new UsageFault("rails or planes are counted; leave one of the two out");
        if (Whole(parsed, "ports", 1, 64) is { } own && own != rails)
            throw new UsageFault("a server has as many ports as there are rails; leave --host-ports out");
        if (tiers > 2) throw new UsageFault("rails are counted for one or two tiers; write --tiers 1 or --tiers 2");
        if (tiers == 2 && rails > ports)
            throw new UsageFault($"a spine of {ports} ports cannot take a leaf of each of {rails} rails; write at most --rails {ports}");
        var most = FabricCounts.Rails(ports, rails, tiers);
        if (Whole(parsed, "count", 1, int.MaxValue) is not { } servers) return FabricFigures.Of(most);
        return FabricFigures.Of(FabricCounts.RailsFor(servers, ports, rails, tiers)
            ?? throw new UsageFault($"{rails} rails of switches of {ports} ports take {most.Servers} servers at most in "
                + $"{(tiers == 1 ? "one tier" : "two tiers")}, and {servers} are asked for"));
    }

    private FabricFigures Counts(ParseResult parsed, int ports, ImmutableArray<Ratio> ratios)
    {
        var tiers = Whole(parsed, "tiers", 1, 8);
        try
        {
            if (Whole(parsed, "rails", 1, 64) is { } rails and > 1) return Rails(parsed, ports, rails, tiers ?? 2, ratios);
            if (Whole(parsed, "planes", 1, 64) is { } planes and > 1) return Planes(parsed, ports, planes, ratios);
            if (Whole(parsed, "count", 1, int.MaxValue) is { } hosts)
            {
                var hostPorts = (long)hosts * (Whole(parsed, "ports", 1, 64) ?? 1);
                if (tiers is { } asked and not 2)
                    return FabricFigures.Of(FabricCounts.FoldedClosFor(hostPorts, ports, asked, ratios)
                        ?? throw new UsageFault($"{asked} {(asked == 1 ? "tier" : "tiers")} of {ports} ports cannot take {hostPorts} ports "
                            + $"of hosts: {FabricCounts.FoldedClos(ports, asked, ratios).Hosts} at most"));
                return FabricFigures.Of(FabricCounts.TwoTierFor(checked((int)hostPorts), ports, ports, ratios.FirstOrDefault(Ratio.One))
                    ?? throw new UsageFault($"two tiers of {ports} ports cannot take {hostPorts} ports of hosts"), hosts);
            }
            return FabricFigures.Of(FabricCounts.FoldedClos(ports, tiers ?? 2, ratios));
        }
        catch (Exception fault) when (fault is OverflowException or ArgumentOutOfRangeException)
        {
            throw new UsageFault($"{tiers ?? 2} tiers of {ports} ports are more than can be counted, or none at all");
        }
    }

    private FabricFigures Planes(ParseResult parsed, int ports, int planes, ImmutableArray<Ratio> ratios)
    {
        if (Whole(parsed, "tiers", 1, 8) is { } tiers and not 2)
            throw new UsageFault($"planes are counted for two tiers, and {tiers} are asked for; leave --tiers out");
        var hosts = Whole(parsed, "count", 1, int.MaxValue) ?? throw new UsageFault("--planes needs --hosts");
        var hostPorts = Whole(parsed, "ports", 1, 64) ?? planes;
        if (hostPorts != planes) throw new UsageFault("a host has as many ports as there are planes; leave --host-ports out");
        return FabricFigures.Of(FabricCounts.Planes(hosts, hostPorts, ports, ratios.FirstOrDefault(Ratio.One))
            ?? throw new UsageFault($"a plane of {ports} ports cannot take {hosts} hosts in two tiers"), hosts);
    }

    /// <summary>Ports of a switch after its split, no more than the silicon can have.</summary>
    private int Ports(ParseResult parsed)
    {
        var stated = Whole(parsed.GetValue(radix), radix.Name, 2, 1 << 20);
        var ways = 1;
        if (parsed.GetValue(breakout) is { } split)
        {
            ways = Numerals.TryWhole(split, out var number) && number is >= 1 and <= PortMode.MostWays ? (int)number
                : PortMode.TryRead(split, out var mode) ? mode.Ways
                : throw new UsageFault($"--breakout '{split}' does not read as a split; write 4 or 4x100G");
        }
        var most = parsed.GetValue(portLimit) is { } limit ? Whole(limit, portLimit.Name, 2, 1 << 20) : int.MaxValue;
        return Math.Min(checked(stated * ways), most);
    }

    private int? Whole(ParseResult parsed, string key, int least, int most) =>
        wanted.Values(parsed, key) is [var text, ..] ? Whole(text, wanted.NameOf(key), least, most) : null;

    private static int Whole(string? text, string name, int least, int most) =>
        Numerals.TryWhole(text, out var value) && value >= least && value <= most
            ? (int)value
            : throw new UsageFault($"{name} '{text}' does not read as a value; write a whole number from {least} to {most}");
}
