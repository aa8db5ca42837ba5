using System.Collections.Immutable;
using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Fabrics;

/// <summary>A number of switches alike in an option.</summary>
/// <param name="Model">What each is.</param>
/// <param name="Cards">The cards in the slots of each; empty for a switch of fixed form.</param>
/// <param name="Role">What they do.</param>
/// <param name="Count">How many there are at the start.</param>
/// <param name="CountOverYears">How many there are after the last year.</param>
/// <param name="PortsUsed">Logical ports in use on all of them together at the start.</param>
/// <param name="PortsFree">Logical ports they could still open in the same modes.</param>
public sealed record SwitchUse(
    DeviceModel Model, ImmutableArray<CardModel> Cards, SwitchRole Role, int Count, int CountOverYears, int PortsUsed, int PortsFree);
