using Lanewright.Standards;

namespace Lanewright.Engineering.Links;

/// <summary>Whether the lanes of one type can be dealt out to several ports of another.</summary>
public static class LaneSplit
{
    /// <summary>How many ports of the narrow type the wide one makes by rate; 0 when the rates do not divide.</summary>
    public static int WaysByRate(InterfaceType wide, InterfaceType narrow)
    {
        if (narrow.Rate.BitsPerSecond == 0 || wide.Rate.BitsPerSecond % narrow.Rate.BitsPerSecond != 0) return 0;
        return (int)(wide.Rate.BitsPerSecond / narrow.Rate.BitsPerSecond);
    }

    /// <summary>Whether that many ports each get fibres of their own. Lanes that share a fibre stay together.</summary>
    public static Check Fibres(InterfaceType wide, InterfaceType narrow, int ways)
    {
        var sharing = wide.WavelengthsPerFibre > 1 && wide.FibrePairs < ways;
        var note = sharing
            ? $"{wide.Name} sends {wide.WavelengthsPerFibre} wavelengths on one fibre; they cannot be taken apart into {ways} ports"
            : "";
        return Check.Of(CheckNames.SharedFibre, !sharing, wide.Definition, note);
    }

    /// <summary>Whether lanes and fibres come out even.</summary>
    public static Check Lanes(InterfaceType wide, InterfaceType narrow, int ways)
    {
        var even = wide.MediaLanes == narrow.MediaLanes * ways && wide.FibrePairs == narrow.FibrePairs * ways;
        var note = even
            ? ""
            : $"{wide.Name} has {wide.MediaLanes} lanes on {wide.Fibres} fibres; "
                + $"{ways} x {narrow.Name} need {narrow.MediaLanes * ways} on {narrow.Fibres * ways}";
        return Check.Of(CheckNames.MediaLanes, even, wide.Definition, note);
    }
}
