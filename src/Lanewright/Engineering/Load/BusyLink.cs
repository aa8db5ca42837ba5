using Lanewright.Quantities;

namespace Lanewright.Engineering.Load;

/// <summary>One of the fullest links of a fabric, in its fuller direction, and how many are alike.</summary>
/// <param name="Link">The link, as an index into the links of the fabric.</param>
/// <param name="From">The node it comes from.</param>
/// <param name="To">The node it goes to.</param>
/// <param name="Rate">What one of its parallel links carries.</param>
/// <param name="Parallel">How many parallel links it is.</param>
/// <param name="Gigabits">What flows over all of them, in Gb/s.</param>
/// <param name="Utilisation">How full they are.</param>
/// <param name="ClassSize">Single links that are alike, these among them.</param>
public sealed record BusyLink(
    int Link, int From, int To, BitRate Rate, int Parallel, double Gigabits, Share Utilisation, long ClassSize);
