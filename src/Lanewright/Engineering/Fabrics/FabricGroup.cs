using System.Collections.Immutable;
using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Fabrics;

/// <summary>Devices alike of an option, placed.</summary>
/// <param name="Name">Its name: letters, digits and hyphens, such as <c>leaf</c> or <c>agg-2</c>.</param>
/// <param name="Role">What they do.</param>
/// <param name="Model">What each is.</param>
/// <param name="Cards">The cards in the slots of each.</param>
/// <param name="Existing">How many of them, counted from the last, exist already and are not bought; all of a group of hosts.</param>
/// <param name="Places">Where each stands.</param>
public sealed record FabricGroup(
    string Name, SwitchRole Role, DeviceModel Model, ImmutableArray<CardModel> Cards, int Existing, ImmutableArray<FabricPlace> Places);
