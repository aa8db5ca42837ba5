using Lanewright.Model.Catalogues;

namespace Lanewright.Engineering.Space;

/// <summary>What a device puts on its rack.</summary>
/// <param name="Watts">The most it draws.</param>
/// <param name="Kilograms">What it weighs.</param>
internal readonly record struct RackLoad(double Watts, double Kilograms)
{
    /// <summary>A device of a model with its cards, modules aside.</summary>
    public static RackLoad Of(DeviceModel model, IReadOnlyCollection<CardModel> cards) => new(
        model.Maximum.Value + cards.Sum(c => c.Maximum.Value), model.Weight.Kilograms + cards.Sum(c => c.Weight.Kilograms));
}
