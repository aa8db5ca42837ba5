using Lanewright.Model.Links;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Model.Binding;

/// <summary>Reads an end written <c>TYPE</c>, <c>MODULE/TYPE</c> or <c>CAGE:LANES/MODULE/TYPE</c>.</summary>
public static class PortDescriptionReader
{
    /// <summary>Reads an end; on failure the problem says what is wrong and what to write.</summary>
    public static bool TryRead(string text, StandardsLibrary standards, out PortDescription description, out string problem)
    {
        description = new PortDescription();
        problem = "";
        var parts = text.Split('/');
        if (parts.Length > 3)
        {
            problem = $"'{text}' has too many parts; write TYPE, MODULE/TYPE or CAGE:LANES/MODULE/TYPE";
            return false;
        }
        var optical = standards.Interface(parts[^1]);
        var copper = standards.Copper(parts[^1]);
        if (optical is null && copper is null)
        {
            var known = standards.InterfaceTypes.Select(t => t.Name).Concat(standards.CopperTypes.Select(t => t.Name));
            problem = Unknown("interface type", parts[^1], known);
            return false;
        }
        description = new PortDescription { Optical = optical, Copper = optical is null ? copper : null };
        if (parts.Length < 2) return true;
        if (standards.FormFactor(parts[^2]) is not { } module)
        {
            problem = Unknown("form factor", parts[^2], standards.FormFactors.Select(f => f.Name));
            return false;
        }
        description = description with { Module = module };
        return parts.Length < 3 || TryReadCage(parts[0], standards, ref description, out problem);
    }

    private static bool TryReadCage(string text, StandardsLibrary standards, ref PortDescription description, out string problem)
    {
        problem = "";
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0)
        {
            problem = $"'{text}' is no cage; write its form factor and its lanes, such as QSFP-DD:8x50G";
            return false;
        }
        if (standards.FormFactor(text[..colon]) is not { } cage)
        {
            problem = Unknown("form factor", text[..colon], standards.FormFactors.Select(f => f.Name));
            return false;
        }
        var lanes = text[(colon + 1)..];
        if (standards.CageModes(lanes).IsEmpty)
        {
            problem = Unknown("set of cage lanes", lanes, standards.CageNames);
            return false;
        }
        description = description with { Cage = cage, CageLanes = lanes };
        return true;
    }

    private static string Unknown(string what, string name, IEnumerable<string> known)
    {
        var all = known.ToList();
        var near = Spelling.DidYouMean(name, all);
        if (near.Length == 0) near = $"; known are {string.Join(", ", all.Take(12))}{(all.Count > 12 ? " and more" : "")}";
        return $"no {what} is called '{name}'" + near;
    }
}
