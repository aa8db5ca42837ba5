using Lanewright.Model.Places;
using Lanewright.Quantities;

namespace Lanewright.Workbench.Sheets;

/// <summary>Addresses of this workbench.</summary>
internal sealed class Site(string token)
{
    /// <summary>The address of a sheet, or of one thing on it.</summary>
    public string To(string sheet, string thing = "") =>
        thing.Length == 0 ? $"/{token}/{sheet}" : $"/{token}/{sheet}/{string.Join('/', thing.Split('/').Select(Uri.EscapeDataString))}";

    /// <summary>How a rack is called in addresses: halls of two sites may share a name.</summary>
    public static string Rack(Rack rack) => $"{rack.Hall.FullName}/{rack.Row}/{Numerals.Padded(rack.Number, 2)}";

    /// <summary>The address of a place.</summary>
    public string To(SheetPlace place) =>
        To(place.Sheet, place.Thing) + (place.Mark.Length > 0 ? "?q=" + Uri.EscapeDataString(place.Mark) : "");

    /// <summary>The address of the answers to a search.</summary>
    public string Asking(string sheet, string words) => $"/{token}/{sheet}?q={Uri.EscapeDataString(words)}";
}
