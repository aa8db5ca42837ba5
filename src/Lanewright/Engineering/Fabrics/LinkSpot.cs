namespace Lanewright.Engineering.Fabrics;

/// <summary>One link of a set.</summary>
/// <param name="From">Which device of the lower side.</param>
/// <param name="To">Which device of the upper side.</param>
/// <param name="FromPort">Which of its ports in the set, from 0.</param>
/// <param name="ToPort">The same at the upper side.</param>
/// <param name="Metres">How long its cable has to be.</param>
internal readonly record struct LinkSpot(int From, int To, int FromPort, int ToPort, double Metres);
