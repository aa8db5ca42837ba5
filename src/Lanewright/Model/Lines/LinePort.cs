using Lanewright.Model.Links;

namespace Lanewright.Model.Lines;

/// <summary>The two ports of one channel of a line.</summary>
/// <param name="Line">The line, by its number in the plan.</param>
/// <param name="Route">The route, from 0.</param>
/// <param name="Channel">The channel, lowest frequency first, from 0.</param>
/// <param name="FromDevice">The device at the first site.</param>
/// <param name="FromPort">Its port.</param>
/// <param name="ToDevice">The device at the second.</param>
/// <param name="ToPort">Its port.</param>
public readonly record struct LinePort(
    int Line, int Route, int Channel, int FromDevice, PortPlace FromPort, int ToDevice, PortPlace ToPort);
