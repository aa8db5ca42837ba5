using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Choice;

/// <summary>What a module shows to the cord.</summary>
/// <param name="Connector">The connector of each opening.</param>
/// <param name="Polish">Its polish; empty when not known.</param>
/// <param name="Count">Openings: two for a module of two duplex links.</param>
public sealed record ModuleOpening(string Connector, string Polish, int Count)
{
    /// <summary>Its alignment pins: <c>pinned</c> or <c>unpinned</c>; empty for what is usual at modules.</summary>
    public string Pins { get; init; } = "";

    /// <summary>Connector and polish, as far as known.</summary>
    public override string ToString() => Polish.Length == 0 ? Connector : $"{Connector} {Polish}";

    /// <summary>What modules for one wavelength show, multiplexers and amplifiers likewise.</summary>
    public static ModuleOpening Duplex { get; } = new("LC-duplex", "UPC", 1);

    /// <summary>The opening of a module: that of the type it runs as a whole; a module of several whole links has one for each.</summary>
    public static ModuleOpening Of(ModuleModel module)
    {
        var whole = module.Applications.FirstOrDefault(a => a.Instances == 1) ?? module.Applications[0];
        if (whole.Wavelength is not null) return Duplex;
        return whole.Optical is { } type
            ? new ModuleOpening(type.Connector, type.Polish, whole.Instances)
            : new ModuleOpening("RJ45", "", 1);
    }
}
