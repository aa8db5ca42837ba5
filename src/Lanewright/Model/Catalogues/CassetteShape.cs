using Lanewright.Quantities;

namespace Lanewright.Model.Catalogues;

/// <summary>What a cassette shows: duplex ports at its front, an array at its rear.</summary>
/// <param name="Ports">Ports at the front; null for as many as the trunk has pairs of fibres.</param>
/// <param name="Connector">Connector of each port.</param>
/// <param name="Polish">Its polish; empty where it is not said.</param>
/// <param name="Rear">Connector that the trunk plugs into; empty where it is not said.</param>
/// <param name="RearPolish">Polish of the rear; empty where it is not said.</param>
/// <param name="RearPins">Alignment pins of the rear: <c>pinned</c> or <c>unpinned</c>; empty where it is not said.</param>
public sealed record CassetteShape(int? Ports, string Connector, string Polish, string Rear, string RearPolish, string RearPins)
{
    /// <summary>Its glass: <c>single-mode</c> or <c>multi-mode</c>; empty where it is not said.</summary>
    public string Glass { get; init; } = "";

    /// <summary>How it is written, for messages.</summary>
    public const string Example = "6 x LC-duplex UPC from MPO-12 APC unpinned, single-mode";

    /// <summary>Reads <c>LC-duplex UPC</c>, or more of it as in <see cref="Example"/>.</summary>
    public static bool TryRead(string text, out CassetteShape? shape)
    {
        shape = null;
        var comma = text.Split(',');
        var glass = comma.Length == 2 ? comma[1].Trim() : "";
        if (comma.Length > 2 || (comma.Length == 2 && glass is not ("single-mode" or "multi-mode"))) return false;
        var words = comma[0].Split(' ', StringSplitOptions.RemoveEmptyEntries);
        int? ports = null;
        if (words.Length > 2 && words[1] == "x")
        {
            if (!Numerals.TryWhole(words[0], out var count) || count is < 1 or > MostPorts) return false;
            ports = (int)count;
            words = words[2..];
        }
        var from = Array.IndexOf(words, "from");
        var front = from < 0 ? words : words[..from];
        var rear = from < 0 ? [] : words[(from + 1)..];
        if (front.Length is < 1 or > 2 || rear.Length > 3 || (from >= 0 && rear.Length == 0)) return false;
        var pins = rear.Length > 0 && rear[^1] is "pinned" or "unpinned" ? rear[^1] : "";
        if (pins.Length > 0) rear = rear[..^1];
        if (rear.Length > 2 || (pins.Length > 0 && rear.Length == 0)) return false;
        shape = new CassetteShape(
            ports, front[0], front.Length > 1 ? front[1] : "", rear.Length > 0 ? rear[0] : "", rear.Length > 1 ? rear[1] : "", pins)
        {
            Glass = glass,
        };
        return true;
    }

    private const int MostPorts = 72;
}
