using Lanewright.Model.Catalogues;
using Lanewright.Quantities;

namespace Lanewright.Engineering.Plant;

/// <summary>A kind of trunk that could be laid in the place of a group's own.</summary>
/// <param name="Cable">The cable.</param>
/// <param name="Cassette">The cassette at its ends; null for open arrays.</param>
/// <param name="Fibres">Fibres of one.</param>
/// <param name="Ports">Ports of one.</param>
/// <param name="Price">Price of one with its cassettes and the adapters of its open ends.</param>
public sealed record TrunkKind(CordModel Cable, SundryModel? Cassette, int Fibres, int Ports, Money Price);
