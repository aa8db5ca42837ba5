using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Standards;

/// <summary>A class of cabled fibre.</summary>
public sealed class Fibre
{
    private const string AttenuationField = "attenuation@";
    private const string DispersionField = "dispersion-max@";

    private readonly ImmutableArray<(WavelengthRange Range, Known<double> Limit)> dispersionBounds;

    /// <summary>Reads a fibre from its rows.</summary>
    public Fibre(FactSheet sheet)
    {
        Sheet = sheet;
        Kind = sheet.Word("kind") == "MMF" ? FibreKind.MultiMode : FibreKind.SingleMode;
        // Interface types print their single-mode limits in one column, whatever the cable grade.
        LimitColumn = Kind == FibreKind.SingleMode ? "os2" : Name.ToLowerInvariant();
        Windows = [.. ReadWindows(sheet, AttenuationField)
            .Select(w => new AttenuationWindow(w.Range, w.Limit.As(Attenuation.FromDecibelsPerKilometre)))];
        dispersionBounds = [.. ReadWindows(sheet, DispersionField)];
    }

    /// <summary>All rows.</summary>
    public FactSheet Sheet { get; }

    /// <summary>The name, such as <c>OS2</c>.</summary>
    public string Name => Sheet.Subject;

    /// <summary>The least attenuation of good modern fibre at any wavelength, in dB/km; null where none was read.</summary>
    public Known<double>? LowestAttenuation
    {
        get
        {
            Known<double>? least = null;
            foreach (var name in LowFields)
                if (Sheet.Real(name) is { } known && !(least?.Value <= known.Value)) least = known;
            return least;
        }
    }

    private static readonly ImmutableArray<string> LowFields = ["attenuation-low-850", "attenuation-low-1310", "attenuation-low-1550"];

    /// <summary>The family of glass.</summary>
    public FibreKind Kind { get; }

    /// <summary>The column of an interface type's limits that holds for this fibre.</summary>
    public string LimitColumn { get; }

    /// <summary>Attenuation by wavelength.</summary>
    public ImmutableArray<AttenuationWindow> Windows { get; }

    /// <summary>Group index: how much slower than in vacuum light travels.</summary>
    public Known<double>? GroupIndex => Sheet.Real("group-index");

    /// <summary>Largest attenuation at a wavelength, or null when no window holds it. Where two windows meet, the tighter
    /// counts.</summary>
    public Known<Attenuation>? AttenuationAt(Wavelength wavelength)
    {
        AttenuationWindow? best = null;
        foreach (var window in Windows)
        {
            if (wavelength < window.Window.Shortest || wavelength > window.Window.Longest) continue;
            if (best is null || window.Limit.Value < best.Limit.Value) best = window;
        }
        return best?.Limit;
    }

    /// <summary>Largest dispersion of a kilometre where it is tabled and not to be computed, in ps/nm; null elsewhere.</summary>
    public Known<Dispersion>? DispersionOfKilometreAt(Wavelength wavelength)
    {
        foreach (var (range, limit) in dispersionBounds)
            if (range.Shortest <= wavelength && wavelength <= range.Longest) return limit.As(Dispersion.FromPicosecondsPerNanometre);
        return null;
    }

    private static IEnumerable<(WavelengthRange Range, Known<double> Limit)> ReadWindows(FactSheet sheet, string field)
    {
        foreach (var fact in sheet.Facts)
        {
            if (!fact.Field.StartsWith(field, StringComparison.Ordinal)) continue;
            var ends = fact.Field[field.Length..].Split('-');
            if (ends.Length != 2 || !Numerals.TryReal(ends[0], out var from) || !Numerals.TryReal(ends[1], out var to)) continue;
            if (sheet.Real(fact.Field) is { } limit)
                yield return (new WavelengthRange(Wavelength.FromNanometres(from), Wavelength.FromNanometres(to)), limit);
        }
    }
}
