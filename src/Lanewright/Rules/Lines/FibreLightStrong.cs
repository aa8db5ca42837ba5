using Lanewright.Engineering.Lines;
using Lanewright.Findings;

namespace Lanewright.Rules.Lines;

/// <summary>So much light in a fibre that it goes beyond hazard level 1M.</summary>
internal sealed class FibreLightStrong() : LineCheckRule(
    "LW5114", nameof(FibreLightStrong), [LineCheckNames.FibreLight],
    "have the hazard level of the places reckoned by a person who answers for laser safety; "
    + "the label on the equipment and local rules decide", Severity.Warning);
