using Lanewright.Engineering.Lines;

namespace Lanewright.Rules.Lines;

/// <summary>A line whose worst channel arrives with too much noise.</summary>
internal sealed class SignalTooNoisy() : LineCheckRule(
    "LW5101", nameof(SignalTooNoisy), [LineCheckNames.Osnr, LineCheckNames.Shannon, LineCheckNames.TransmitterOsnr],
    "raise or lower the launch, use quieter amplifiers, put one in between, or take a type "
    + "that needs less");
