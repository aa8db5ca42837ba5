using System.Collections.Immutable;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Links;

/// <summary>Whether both ends can run one code, and what each port must be set to.</summary>
public sealed record FecChecks(ImmutableArray<Check> All, string FromPort, string ToPort)
{
    private static readonly Citation Practice = new("operators' practice for 25.78125 GBd lanes", "", "", Mark.CommonPractice);

    /// <summary>Codes of an optical pair.</summary>
    /// <param name="from">The first port.</param>
    /// <param name="fromSide">Its code.</param>
    /// <param name="to">The second port.</param>
    /// <param name="toSide">Its code.</param>
    /// <param name="type">What the first end runs.</param>
    /// <param name="toType">What the second end runs.</param>
    public static FecChecks OfOptics(EndUse from, FecSide fromSide, EndUse to, FecSide toSide, InterfaceType type, InterfaceType toType)
    {
        if (Deployed(from, fromSide, to, toSide, type, toType) is { } deployed) return deployed;
        var code = type.Signal == toType.Signal ? CommonCode(fromSide, toSide, type) : null;
        var wire = Wire(fromSide, toSide, type, code);
        var common = fromSide.OnWire == toSide.OnWire ? null : code;
        var fromPort = common ?? fromSide.AtPort;
        var toPort = common ?? toSide.AtPort;
        return new FecChecks([wire, .. Port(from, fromPort, type, "from"), .. Port(to, toPort, type, "to")],
            from.FixedFec ?? fromPort, to.FixedFec ?? toPort);
    }

    /// <summary>Codes of a cable that both ports drive alike.</summary>
    public static FecChecks OfCable(EndUse from, EndUse to, string code, Citation source) =>
        new([.. PortOf(from, code, source, "from"), .. PortOf(to, code, source, "to")], from.FixedFec ?? code, to.FixedFec ?? code);

    /// <summary>Where both ends cannot run the code of the standard, one that such ports are also run with, if both have it.</summary>
    private static FecChecks? Deployed(
        EndUse from, FecSide fromSide, EndUse to, FecSide toSide, InterfaceType type, InterfaceType toType)
    {
        var standard = fromSide.OnWire;
        if (standard != toSide.OnWire || fromSide.InModule || toSide.InModule) return null;
        if (CanRun(from, standard) && CanRun(to, standard)) return null;
        var agreed = type.CodesDeployed.FirstOrDefault(c => toType.CodesDeployed.Contains(c) && CanRun(from, c) && CanRun(to, c));
        if (agreed is null) return null;
        var source = type.Sheet.SourceOf("fec-deployed");
        var wire = Check.If(CheckNames.WireFec, source,
            $"{type.Name} asks for {standard}, which both ends cannot run here: set both ports to {agreed}, outside the standard");
        return new FecChecks([wire, .. PortOf(from, agreed, source, "from"), .. PortOf(to, agreed, source, "to")], agreed, agreed);
    }

    private static bool CanRun(EndUse end, string code) =>
        end.FixedFec is { } set ? set == code : end.Cage.Fec.IsEmpty || end.Cage.Fec.Contains(code);

    private static Check Wire(FecSide from, FecSide to, InterfaceType type, string? common)
    {
        var source = type.Sheet["fec"]?.Source ?? type.Definition;
        if (from.OnWire == to.OnWire) return Check.Of(CheckNames.WireFec, true, source);
        if (common is { } code)
            return Check.If(CheckNames.WireFec, Practice,
                $"one type asks for {from.OnWire} and the other for {to.OnWire}: set both ports to {code}");
        return Check.Of(CheckNames.WireFec, false, source,
            $"one end puts {from.OnWire} on the wire, the other {to.OnWire}, and no port setting changes that");
    }

    /// <summary>NRZ lanes keep their symbol rate with and without a code, so two hosts can agree; modules cannot.</summary>
    private static string? CommonCode(FecSide from, FecSide to, InterfaceType type)
    {
        if (from.InModule || to.InModule || type.Signal.Modulation != Modulation.Nrz) return null;
        return from.OnWire == FecSide.None ? to.OnWire : from.OnWire;
    }

    private static IEnumerable<Check> Port(EndUse end, string needed, InterfaceType type, string side) =>
        PortOf(end, needed, type.Sheet["fec"]?.Source ?? type.Definition, side);

    private static IEnumerable<Check> PortOf(EndUse end, string needed, Citation source, string side)
    {
        if (!end.Cage.Fec.IsEmpty && !end.Cage.Fec.Contains(needed))
        {
            var codes = string.Join(", ", end.Cage.Fec);
            yield return Check.Of(CheckNames.HostFec, false, source, $"the port must run {needed} and its silicon has {codes}")
                with { End = side };
            yield break;
        }
        if (end.FixedFec is { } set && set != needed)
        {
            yield return Check.Of(CheckNames.HostFec, false, source, $"the port is set to {set} and the link needs it set to {needed}")
                with { End = side };
            yield break;
        }
        yield return Check.Of(CheckNames.HostFec, true, source) with { End = side };
    }
}
