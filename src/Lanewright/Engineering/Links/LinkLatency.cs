using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Links;

/// <summary>Delay of a link in one direction: the way and the code.</summary>
public static class LinkLatency
{
    /// <summary>Nanoseconds light takes for a metre of vacuum.</summary>
    private const double VacuumNanosecondsPerMetre = 1e9 / 299_792_458;

    /// <summary>Delay over fibre.</summary>
    public static Known<Duration> OverFibre(StandardsLibrary standards, Fibre fibre, Length length, string fec)
    {
        var index = fibre.GroupIndex ?? standards.Fibres.Select(f => f.GroupIndex).OfType<Known<double>>().First();
        return WithCode(standards, index.As(i => Duration.FromNanoseconds(i * VacuumNanosecondsPerMetre * length.Metres)), fec);
    }

    /// <summary>Delay over copper.</summary>
    public static Known<Duration> OverCopper(StandardsLibrary standards, bool isTwistedPair, Length length, string fec)
    {
        var perMetre = standards.Practice(isTwistedPair ? "pair" : "twinax", "delay");
        return WithCode(standards, perMetre.As(ns => Duration.FromNanoseconds(ns * length.Metres)), fec);
    }

    private static Known<Duration> WithCode(StandardsLibrary standards, Known<Duration> way, string fec)
    {
        if (standards.Fec(fec)?.Real("latency") is not { } code) return way;
        var source = way.Source with { Mark = Marks.Weaker(way.Source.Mark, code.Source.Mark) };
        return new Known<Duration>(way.Value + Duration.FromNanoseconds(code.Value), source);
    }
}
