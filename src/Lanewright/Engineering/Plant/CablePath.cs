using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Model.Links;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>The whole way of one link, from port to port. The losses of its elements add up to the loss the link was judged
/// by.</summary>
public sealed class CablePath
{
    private readonly Plan plan;
    private readonly Solution solution;
    private readonly ImmutableArray<TrunkPatch> patches;
    private readonly int link;
    private readonly string cable;
    private readonly List<PathElement> elements = [];
    private int pairsLeft;
    private int leg = -1;

    private CablePath(Plan plan, Solution solution, ImmutableArray<TrunkPatch> patches, int link, string cable)
    {
        this.plan = plan;
        this.solution = solution;
        this.patches = patches;
        this.link = link;
        this.cable = cable;
    }

    /// <summary>How the link is made.</summary>
    public Solution Solution => solution;

    /// <summary>Loss of one of the trunks on the way with the pairs at its panels: what a tester reads of it when all is as
    /// reckoned.</summary>
    /// <param name="trunk">Which, from 0.</param>
    public Decibels LossOf(int trunk) => Sum(e => e.Leg == trunk);

    /// <summary>Loss of what no test of the trunks shows: cords, reserves, attenuators.</summary>
    public Decibels LossBeside => Sum(e => e.Leg < 0);

    /// <summary>What the trunks may lose together so that the application still has its limit, in dB; null when that is not
    /// known.</summary>
    public double? AllowedForTrunks => Allowed - LossBeside.Value;

    /// <summary>What light passes, in order.</summary>
    public ImmutableArray<PathElement> Elements => [.. elements];

    /// <summary>Where transmitters and receivers meet; null for copper, active cables and fan-outs, whose ends are made for one
    /// another.</summary>
    public WayPolarity? Polarity { get; private init; }

    /// <summary>Every fibre of the link from end to end; empty without trunks, and where the way of fibres is not known.</summary>
    public ImmutableArray<FibreLine> Fibres { get; private init; } = [];

    /// <summary>The trunks on the way, in order.</summary>
    public ImmutableArray<TrunkPatch> Patches => patches;

    /// <summary>The most that the cabling tests of all trunks on the way may show together, by edition; empty without trunks.</summary>
    public ImmutableArray<TestLimit> Tests { get; private init; } = [];

    /// <summary>What the interface type allows from module to module, in dB; null when not known.</summary>
    public double? Allowed => solution.Checks.FirstOrDefault(c => c.Name == CheckNames.ChannelLoss)?.Limit;

    /// <summary>The interface type.</summary>
    public string TypeName => solution.TypeName;

    /// <summary>The worst lane's loss; null for copper and active cables.</summary>
    public Decibels? Loss => solution.Loss?.Maximum;

    /// <summary>Length of the whole.</summary>
    public Length Length => solution.Channel?.Length ?? solution.Length;

    /// <summary>The way of a link, followed from its first end; null where nothing is laid.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="design">Its design.</param>
    /// <param name="book">Its trunks.</param>
    /// <param name="link">Number of the link, from 0.</param>
    /// <param name="name">What its cable is called.</param>
    public static CablePath? Of(Plan plan, LinkDesign design, PlantBook book, int link, string name)
    {
        if (design.SolutionOf(link) is not { } solution || design.CableOf(link) < 0) return null;
        var path = new CablePath(plan, solution, book.PatchesOf(link), link, name)
        {
            Polarity = book.PolarityOf(link),
            Fibres = book.FibresOf(link),
            Tests = TestLimit.Together(book.PatchesOf(link).Select(p => book.Trunks[p.Trunk.Index].Tests)),
        };
        path.Walk();
        return path;
    }

    private void Walk()
    {
        End(plan.Links.FromDevice(link), plan.Links.FromPort(link), solution.FromModule?.Name);
        if (solution is { Channel: { } attenuated, AttenuatorEnd: "from" }) Attenuator(attenuated);
        if (solution.Channel is not { } channel) Add("cable", cable, solution.Cable.Name, null);
        else if (patches.IsEmpty) Straight(channel);
        else Patched(channel);
        if (solution.Channel is { } whole) Extras(whole);
        End(plan.Links.ToDevice(link), plan.Links.ToPort(link), solution.ToModule?.Name, isLast: true);
    }

    private void End(int device, PortPlace port, string? module, bool isLast = false)
    {
        var label = plan.Devices.Group(device).Layout.Slots[port.Cage].Label;
        var at = new PathElement("port", plan.Devices.Name(device), label, null);
        if (!isLast) elements.Add(at);
        if (module is not null) Add("module", module, "", null);
        if (isLast) elements.Add(at);
    }

    private void Straight(Channel channel)
    {
        Add("cord", cable, solution.Cable.Name, channel.MeasuredLoss ?? Glass(channel, channel.Length));
        if (channel.MeasuredLoss is not null) return;
        for (var i = 1; i <= channel.Connections; i++)
            Add("connection", "on the way", $"{Numerals.Whole(i)} of {Numerals.Whole(channel.Connections)}", channel.ConnectionLoss.Value);
    }

    private void Patched(Channel channel)
    {
        pairsLeft = channel.Connections - (channel.Stretch?.Connections ?? 0);
        for (var i = 0; i < patches.Length; i++)
        {
            Cord(channel, i);
            leg = i;
            Trunk(channel, patches[i]);
            leg = -1;
        }
        Cord(channel, patches.Length);
        // Pairs that the statement adds lie somewhere on the way.
        while (pairsLeft > 0) Connection(channel, "on the way", "", isMeasured: false);
    }

    private void Cord(Channel channel, int joint)
    {
        var cord = solution.Patching[joint];
        var type = Polarity is { } polarity ? polarity.CordTypes[joint] + ", " : "";
        Add("cord", CordNames.Of(cable, solution, joint, plan.Links.LegOf(link)), type + cord.Cord.Name, Glass(channel, cord.Length));
    }

    private void Trunk(Channel channel, TrunkPatch patch)
    {
        var trunk = patch.Trunk;
        var isMeasured = trunk.MeasuredLoss is not null;
        Connection(channel, Place(patch.NearPanel, patch.NearSlot), PortOf(patch.IsNearOpen, patch.NearPort), isMeasured);
        Cassette(channel, patch, patch.Leg.IsTurned, patch.NearPort, isMeasured, isBefore: true);
        var glass = trunk.MeasuredLoss ?? Glass(channel, patch.Leg.Length ?? default);
        Add("trunk", trunk.NameOf(patch.Number), $"type {TrunkFronts.CableType(trunk)}, {trunk.Cable.Name}", glass);
        // Splices that the statement counts lie nobody knows where; those of the trunk lie in it.
        if (trunk.Splices > 0 && !AreSplicesStated)
            Add("splices", trunk.NameOf(patch.Number), Numerals.Whole(trunk.Splices),
                isMeasured ? null : channel.SpliceLoss.Value * trunk.Splices);
        for (var i = 1; i <= trunk.PairsBetween; i++)
            Connection(channel, trunk.NameOf(patch.Number), $"on the way, {i} of {trunk.PairsBetween}", isMeasured);
        Cassette(channel, patch, !patch.Leg.IsTurned, patch.FarPort, isMeasured, isBefore: false);
        Connection(channel, Place(patch.FarPanel, patch.FarSlot), PortOf(patch.IsFarOpen, patch.FarPort), isMeasured);
    }

    private void Cassette(Channel channel, TrunkPatch patch, bool isFar, int port, bool isMeasured, bool isBefore)
    {
        if (patch.Trunk.CassetteAt(isFar) is not { } cassette) return;
        var (panel, slot) = isBefore ? (patch.NearPanel, patch.NearSlot) : (patch.FarPanel, patch.FarSlot);
        var array = isFar ? patch.Trunk.Cable.Far : patch.Trunk.Cable.Near;
        if (isBefore) Add("cassette", cassette.Name, PortOf(isOpen: false, port), null);
        Connection(channel, Place(panel, slot), array, isMeasured);
        if (!isBefore) Add("cassette", cassette.Name, PortOf(isOpen: false, port), null);
    }

    /// <summary>What was measured from panel to panel is in the trunk; pairs that the statement leaves out cost nothing.</summary>
    private void Connection(Channel channel, string place, string position, bool isMeasured)
    {
        var loss = isMeasured ? null : pairsLeft > 0 ? channel.ConnectionLoss.Value : (Decibels?)default(Decibels);
        if (!isMeasured) pairsLeft--;
        Add("connection", place, position, loss);
    }

    private void Extras(Channel channel)
    {
        var splices = channel.Splices - (channel.Stretch?.Splices ?? 0);
        if (splices > 0 && channel.MeasuredLoss is null && (patches.IsEmpty || AreSplicesStated))
            Add("splices", "on the way", Numerals.Whole(splices), channel.SpliceLoss.Value * splices);
        if (solution.AttenuatorEnd != "from") Attenuator(channel);
        if (channel.AgeingMargin > default(Decibels)) Add("reserve", "ageing and repair", "", channel.AgeingMargin);
    }

    private bool AreSplicesStated => plan.Statements[plan.Links.Statement(link)].Splices is not null;

    /// <summary>It stands before the receiver that needs it.</summary>
    private void Attenuator(Channel channel)
    {
        if (channel.Attenuator > default(Decibels)) Add("attenuator", solution.Attenuator?.Name ?? "", "", channel.Attenuator);
    }

    /// <summary>The part of the fibre's loss that falls on a length that was not measured.</summary>
    private Decibels Glass(Channel channel, Length length)
    {
        var fibre = solution.Loss?.Parts.FirstOrDefault(p => p.What == "fibre")?.Loss ?? default;
        var computed = channel.Length - (channel.Stretch?.Length ?? default);
        return computed.Metres > 0 ? fibre * (length.Metres / computed.Metres) : default;
    }

    private string Place(int panel, int slot) => $"{plan.Devices.Name(panel)}:{Numerals.Padded(slot, 2)}";

    private static string PortOf(bool isOpen, int port) => isOpen ? "array" : port == 0 ? "by its label" : "port " + Numerals.Whole(port);

    private void Add(string kind, string id, string position, Decibels? loss) =>
        elements.Add(new PathElement(kind, id, position, loss) { Leg = leg });

    private Decibels Sum(Func<PathElement, bool> counts) =>
        elements.Where(counts).Aggregate(default(Decibels), (sum, e) => sum + (e.Loss ?? default));
}
