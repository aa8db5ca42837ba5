using Lanewright.Engineering.Links;
using Lanewright.Model.Catalogues;
using Lanewright.Model.Places;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Cabling;

/// <summary>Plug and bend of a cable against the space between port and closed door.</summary>
public static class BendSpace
{
    /// <summary>Wire this thick or thicker, over four lanes or more, is what installers call thick copper.</summary>
    private const int ThickGauge = 26;

    private const int ThickLanes = 4;

    /// <summary>The comparisons of an assembly at one end.</summary>
    public static IEnumerable<Check> OfAssembly(StandardsLibrary standards, AssemblyModel cable, RackType rack, string side)
    {
        var radius = RadiusOf(standards, cable);
        yield return Check.AtLeast(CheckNames.BendSpace, rack.FrontSpace.Millimetres,
            radius.As(r => (r + cable.Plug).Millimetres), "mm") with { End = side };
        if (cable.Medium != CableMedium.Dac || cable.Gauge > ThickGauge) yield break;
        if (cable.Type is not { } type || type.Lanes * cable.Legs < ThickLanes) yield break;
        var wide = standards.Practice("bend-twinax", "thick-radius");
        yield return Check.AtLeast(CheckNames.ThickCopperBend, rack.FrontSpace.Millimetres, wide.As(r => r + cable.Plug.Millimetres), "mm")
            with { End = side, IsAdvice = true };
    }

    /// <summary>The comparison of a cord at one end.</summary>
    public static Check OfCord(StandardsLibrary standards, CordModel cord, RackType rack, string side)
    {
        var plug = standards.Practice("plug", cord.IsTwistedPair ? "pair" : "fibre");
        var radius = RadiusOf(standards, cord);
        var needed = radius.As(r => r.Millimetres + plug.Value);
        return Check.AtLeast(CheckNames.BendSpace, rack.FrontSpace.Millimetres, needed, "mm", plug.Source.Mark)
            with { End = side };
    }

    /// <summary>The smallest radius a cable may lie in when it is installed.</summary>
    public static Known<Length> RadiusOf(StandardsLibrary standards, CableItem cable) => cable switch
    {
        AssemblyModel { BendRadius: { } stated } assembly =>
            new Known<Length>(stated, new Citation("assembly data sheet", "", "", CatalogueFacts.MarkOf(assembly))),
        AssemblyModel assembly => Rule(standards, assembly),
        CordModel { IsTwistedPair: true } => Times(standards.Practice("bend-pair", "installed"), cable.Diameter),
        CordModel cord => CordRadius(standards, cord),
        _ => throw new InvalidOperationException($"{cable.Name} is neither an assembly nor a cord"),
    };

    /// <summary>The smallest radius a cable may be pulled round: of fibre it is larger than the installed one.</summary>
    public static Known<Length> PullingRadiusOf(StandardsLibrary standards, CableItem cable) => cable is CordModel { IsTwistedPair: false }
        ? Times(standards.Practice("bend-fibre", "pulling"), cable.Diameter)
        : RadiusOf(standards, cable);

    private static Known<Length> CordRadius(StandardsLibrary standards, CordModel cord)
    {
        var byDiameter = Times(standards.Practice("bend-fibre", "installed"), cord.Diameter);
        var least = standards.Practice("bend-fibre", "cord").As(Length.FromMillimetres);
        return byDiameter.Value > least.Value ? byDiameter : least;
    }

    private static Known<Length> Rule(StandardsLibrary standards, AssemblyModel cable) => cable.Medium == CableMedium.Aoc
        ? (standards.PracticeOrNull("bend-active-optical", $"{cable.LegRate * cable.Legs}-radius")
            ?? standards.Practice("bend-active-optical", "radius")).As(Length.FromMillimetres)
        : Times(standards.Practice("bend-twinax", "single"), cable.Diameter);

    private static Known<Length> Times(Known<double> times, Length diameter) => times.As(t => diameter * t);
}
