using System.Collections.Immutable;
using Lanewright.Quantities;

namespace Lanewright.Standards;

/// <summary>A class of cabled fibre.</summary>
public sealed class Fibre
{
    private const string AttenuationField = "attenuation@";

    /// <summary>Reads a fibre from its rows.</summary>
    public Fibre(FactSheet sheet)
    {
        Sheet = sheet;
        Kind = sheet.Word("kind") == "MMF" ? FibreKind.MultiMode : FibreKind.SingleMode;
        // Interface types print their single-mode limits in one column, whatever the cable grade.
        LimitColumn = Kind == FibreKind.SingleMode ? "os2" : Name.ToLowerInvariant();
        Windows = ReadWindows(sheet);
    }

    /// <summary>All rows.</summary>
    public FactSheet Sheet { get; }

    /// <summary>The name, such as <c>OS2</c>.</summary>
    public string Name => Sheet.Subject;

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

    private static ImmutableArray<AttenuationWindow> ReadWindows(FactSheet sheet)
    {
        var windows = ImmutableArray.CreateBuilder<AttenuationWindow>();
        foreach (var fact in sheet.Facts)
        {
            if (!fact.Field.StartsWith(AttenuationField, StringComparison.Ordinal)) continue;
            var ends = fact.Field[AttenuationField.Length..].Split('-');
            if (ends.Length != 2 || !Numerals.TryReal(ends[0], out var from) || !Numerals.TryReal(ends[1], out var to)) continue;
            if (sheet.Real(fact.Field) is not { } limit) continue;
            windows.Add(new AttenuationWindow(
                new WavelengthRange(Wavelength.FromNanometres(from), Wavelength.FromNanometres(to)),
                limit.As(Attenuation.FromDecibelsPerKilometre)));
        }
        return windows.ToImmutable();
    }
}
