using System.Collections.Immutable;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Links;

/// <summary>Insertion loss of a channel for the lanes of an interface type: the most a lane can suffer and the least.</summary>
/// <param name="Maximum">Loss of the worst lane, everything at its limit.</param>
/// <param name="Minimum">Loss of the best lane over good fibre and connections without loss: the case that overloads a receiver.</param>
/// <param name="WorstWavelength">Where the worst lane lies.</param>
/// <param name="Parts">What the maximum is made of.</param>
/// <param name="Mark">The weakest mark of the values used.</param>
public sealed record ChannelLoss(Decibels Maximum, Decibels Minimum, Wavelength WorstWavelength, ImmutableArray<LossPart> Parts, Mark Mark)
{
    /// <summary>The name of the part that was measured from panel to panel.</summary>
    public const string MeasuredTrunks = "measured trunks";

    /// <summary>The loss, or null when the fibre's attenuation is not known at a wavelength of the type.</summary>
    public static ChannelLoss? Of(Channel channel, InterfaceType type)
    {
        if (type.Lanes.IsEmpty) return null;
        Known<Attenuation>? worst = null;
        var at = type.Lanes[0].Shortest;
        foreach (var edge in type.Lanes.SelectMany(lane => new[] { lane.Shortest, lane.Longest }))
        {
            if (AttenuationAt(channel, type, edge) is not { } attenuation) return null;
            if (worst is { } known && attenuation.Value <= known.Value) continue;
            worst = attenuation;
            at = edge;
        }
        return worst is { } largest ? Sum(channel, type, largest, at) : null;
    }

    /// <summary>The larger loss of two types at the ends of a channel; null when that of either is not known.</summary>
    public static ChannelLoss? Worse(Channel channel, InterfaceType from, InterfaceType to)
    {
        var forth = Of(channel, from);
        return Worse(forth, from.Name == to.Name ? forth : Of(channel, to));
    }

    /// <summary>The larger of two losses; null when either is not known.</summary>
    internal static ChannelLoss? Worse(ChannelLoss? forth, ChannelLoss? back)
    {
        if (forth is null || back is null) return null;
        return back.Maximum > forth.Maximum ? back : forth;
    }

    private static ChannelLoss Sum(Channel channel, InterfaceType type, Known<Attenuation> attenuation, Wavelength at)
    {
        var stretch = channel.Stretch;
        var pairs = Math.Max(0, channel.Connections - (stretch?.Connections ?? 0));
        var joins = Math.Max(0, channel.Splices - (stretch?.Splices ?? 0));
        var computed = channel.Length - (stretch?.Length ?? default);
        var fibre = attenuation.Value * computed;
        var connections = channel.ConnectionLoss.Value * pairs;
        var splices = channel.SpliceLoss.Value * joins;
        var parts = ImmutableArray.CreateBuilder<LossPart>();
        var mark = Mark.Seen;
        Decibels passive;
        if (channel.MeasuredLoss is { } measured)
        {
            passive = measured;
            parts.Add(new LossPart("measured", measured));
        }
        else
        {
            passive = fibre + connections + splices + (stretch?.Loss ?? default);
            parts.Add(new LossPart("fibre", fibre));
            if (stretch is not null) parts.Add(new LossPart(MeasuredTrunks, stretch.Loss));
            mark = attenuation.Source.Mark;
            if (pairs > 0)
            {
                parts.Add(new LossPart("connections", connections));
                mark = Marks.Weaker(mark, channel.ConnectionLoss.Source.Mark);
            }
            if (joins > 0)
            {
                parts.Add(new LossPart("splices", splices));
                mark = Marks.Weaker(mark, channel.SpliceLoss.Source.Mark);
            }
        }
        if (channel.Attenuator > default(Decibels)) parts.Add(new LossPart("attenuator", channel.Attenuator));
        if (channel.AgeingMargin > default(Decibels)) parts.Add(new LossPart("ageing", channel.AgeingMargin));
        if (channel.OtherWavelengths > default(Decibels)) parts.Add(new LossPart("other wavelengths", channel.OtherWavelengths));
        var most = passive + channel.Attenuator + channel.AgeingMargin + channel.OtherWavelengths;
        var least = channel.MeasuredLoss ?? ((LowAttenuation(channel, type) * computed) + (stretch?.Loss ?? default));
        return new ChannelLoss(most, least + channel.Attenuator, at, parts.ToImmutable(), mark);
    }

    private static Known<Attenuation>? AttenuationAt(Channel channel, InterfaceType type, Wavelength wavelength)
    {
        if (channel.Attenuation is { } measured) return Scaled(measured, channel.AttenuationAt, wavelength);
        if (channel.Fibre.Kind == FibreKind.MultiMode && type.FibreAttenuation is { } ofType) return ofType;
        return channel.Fibre.AttenuationAt(wavelength);
    }

    /// <summary>Rayleigh scattering falls with the fourth power of the wavelength; good from 1260 to 1340 nm only.</summary>
    private static Known<Attenuation> Scaled(Known<Attenuation> measured, Wavelength? at, Wavelength wavelength)
    {
        if (at is not { } reference) return measured;
        var ratio = Math.Pow(reference.Nanometres / wavelength.Nanometres, 4);
        return measured.As(a => Attenuation.FromDecibelsPerKilometre(a.DecibelsPerKilometre * ratio));
    }

    /// <summary>The least a lane can suffer: that of the longest wavelength, where a measured value is scaled.</summary>
    private static Attenuation LowAttenuation(Channel channel, InterfaceType type)
    {
        if (channel.Attenuation is { } measured) return Scaled(measured, channel.AttenuationAt, type.Lanes[^1].Longest).Value;
        var centre = type.Lanes[^1].Centre.Nanometres;
        var field = channel.Fibre.Kind == FibreKind.MultiMode ? "attenuation-low-850"
            : centre < CentreOfSingleModeWindows ? "attenuation-low-1310" : "attenuation-low-1550";
        return Attenuation.FromDecibelsPerKilometre(channel.Fibre.Sheet.Real(field)?.Value ?? 0);
    }

    /// <summary>Between the O band and the C band.</summary>
    private const double CentreOfSingleModeWindows = 1450;
}
