using Lanewright.Model.Links;

namespace Lanewright.Engineering.Lines;

/// <summary>An end of a cord of a line.</summary>
/// <param name="Site">The site, or the hut by the span it stands on.</param>
/// <param name="Device">The device, or -1 where the plan names none.</param>
/// <param name="Port">Its port, where the end is plugged into a module.</param>
/// <param name="What">What it is plugged into otherwise, such as <c>multiplexer 3</c>; empty for a module.</param>
public sealed record LinePoint(string Site, int Device, PortPlace? Port, string What);
