using System.Collections.Immutable;
using Lanewright.Engineering.Choice;
using Lanewright.Engineering.Links;
using Lanewright.Model;
using Lanewright.Model.Links;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>The whole way of one cable, from port to port. The losses of its elements add up to the loss the link was judged
/// by.</summary>
public sealed class CablePath
{
    private readonly Plan plan;
    private readonly Solution solution;
    private readonly TrunkPatch? patch;
    private readonly int link;
    private readonly string cable;
    private readonly List<PathElement> elements = [];

    private CablePath(Plan plan, Solution solution, TrunkPatch? patch, int link, string cable)
    {
        this.plan = plan;
        this.solution = solution;
        this.patch = patch;
        this.link = link;
        this.cable = cable;
    }

    /// <summary>What light passes, in order.</summary>
    public ImmutableArray<PathElement> Elements => [.. elements];

    /// <summary>Where transmitters and receivers meet; null for a cable without trunks, whose cord is made for its modules.</summary>
    public PolarityAnswer? Polarity { get; private init; }

    /// <summary>The worst lane's loss; null for copper and active cables.</summary>
    public Decibels? Loss => solution.Loss?.Maximum;

    /// <summary>Length of the whole.</summary>
    public Length Length => solution.Channel?.Length ?? solution.Length;

    /// <summary>The way of a cable, followed from the first end of its first link; null where nothing is laid.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="design">Its design.</param>
    /// <param name="book">Its trunks.</param>
    /// <param name="number">Number of the cable, from 0.</param>
    /// <param name="name">What the cable is called.</param>
    public static CablePath? Of(Plan plan, LinkDesign design, PlantBook book, int number, string name)
    {
        var link = design.Cables[number].FirstLink;
        if (design.SolutionOf(link) is not { } solution) return null;
        var patch = book.PatchOf(number);
        var path = new CablePath(plan, solution, patch, link, name)
        {
            Polarity = patch is null ? null : book.Trunks[patch.Trunk.Index].Polarity,
        };
        path.Walk();
        return path;
    }

    private void Walk()
    {
        End(plan.Links.FromDevice(link), plan.Links.FromPort(link), solution.FromModule?.Name);
        if (solution.Channel is not { } channel) Add("cable", cable, solution.Cable.Name, null);
        else if (patch is null) Straight(channel);
        else Patched(channel, patch);
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
        Add("cord", cable, solution.Cable.Name, Glass(channel, channel.Length));
        if (channel.MeasuredLoss is not null) return;
        for (var i = 1; i <= channel.Connections; i++)
            Add("connection", "on the way", $"{Numerals.Whole(i)} of {Numerals.Whole(channel.Connections)}", channel.ConnectionLoss.Value);
    }

    private void Patched(Channel channel, TrunkPatch through)
    {
        var trunk = through.Trunk;
        var laid = solution.Length + (solution.FarLength ?? default);
        var isMeasured = channel.MeasuredLoss is not null;
        Decibels? each = isMeasured ? null : channel.ConnectionLoss.Value;
        Add("cord", cable + "a", solution.Cable.Name, Glass(channel, solution.Length));
        Add("connection", Place(through.NearPanel, through.NearSlot), PortOf(trunk.Cassette is null, through.NearPort), each);
        if (trunk.Cassette is { } near)
        {
            Add("cassette", near.Name, Fibres(trunk.Positions, through.NearPort), null);
            Add("connection", Place(through.NearPanel, through.NearSlot), trunk.Cable.Near, each);
        }
        var measured = channel.MeasuredLoss is { } whole ? whole - Glass(channel, laid) : Glass(channel, channel.Length - laid);
        Add("trunk", $"{trunk.Name}-{Numerals.Whole(through.Number)}", trunk.Cable.Name, measured);
        if (trunk.Cassette is { } far)
        {
            Add("connection", Place(through.FarPanel, through.FarSlot), trunk.Cable.Far, each);
            Add("cassette", far.Name, Fibres(trunk.Positions, through.FarPort), null);
        }
        Add("connection", Place(through.FarPanel, through.FarSlot), PortOf(trunk.Cassette is null, through.FarPort), each);
        Add("cord", cable + "b", solution.FarCord?.Name ?? "", Glass(channel, solution.FarLength ?? default));
        var said = trunk.Connections;
        // Pairs that the statement adds or leaves out lie somewhere on the way.
        for (var i = said + 1; i <= channel.Connections && !isMeasured; i++) Add("connection", "on the way", "", each);
    }

    private void Extras(Channel channel)
    {
        if (channel is { Splices: > 0, MeasuredLoss: null })
            Add("splices", Numerals.Whole(channel.Splices), "", channel.SpliceLoss.Value * channel.Splices);
        if (channel.Attenuator > default(Decibels)) Add("attenuator", solution.Attenuator?.Name ?? "", "", channel.Attenuator);
        if (channel.AgeingMargin > default(Decibels)) Add("reserve", "ageing and repair", "", channel.AgeingMargin);
    }

    /// <summary>The part of the fibre's loss that falls on a length; all that was measured where no trunk was.</summary>
    private Decibels Glass(Channel channel, Length length)
    {
        if (channel.MeasuredLoss is { } measured && patch is null) return measured;
        if (patch is not null && channel.MeasuredLoss is not null)
        {
            var first = solution.FromApplication?.Optical?.Lanes[0].Shortest;
            return first is { } at && channel.Fibre.AttenuationAt(at) is { } known ? known.Value * length : default;
        }
        var fibre = solution.Loss?.Parts.FirstOrDefault(p => p.What == "fibre")?.Loss ?? default;
        return channel.Length.Metres > 0 ? fibre * (length.Metres / channel.Length.Metres) : default;
    }

    private string Place(int panel, int slot) => $"{plan.Devices.Name(panel)}:{Numerals.Padded(slot, 2)}";

    private static string PortOf(bool isOpen, int port) => isOpen ? "array" : port == 0 ? "by its label" : "port " + Numerals.Whole(port);

    /// <summary>The two positions of a duplex port where pairs lie side by side; told only where the order is known.</summary>
    private string Fibres(int positions, int port)
    {
        if (port == 0 || patch is not { Trunk.IsOrderKnown: true }) return "";
        return $"fibres {Numerals.Whole((2 * port) - 1)} and {Numerals.Whole(Math.Min(positions, 2 * port))} of the duplex side";
    }

    private void Add(string kind, string id, string position, Decibels? loss) => elements.Add(new PathElement(kind, id, position, loss));
}
