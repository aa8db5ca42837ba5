using System.Collections.Immutable;
using Lanewright.Findings;
using Lanewright.Model.Catalogues;
using Lanewright.Notation;
using Lanewright.Quantities;

namespace Lanewright.Model.Binding;

/// <summary>Turns a list of cards into the cards in the slots of a device.</summary>
internal static class CardBinder
{
    private const int MostSlots = 64;

    /// <summary>The cards under the key <c>cards</c>, in slot order; those the model has no slot for are reported and left out. Null when
    /// one of them is described in a catalogue and could not be made.</summary>
    /// <param name="map">Where the key stands.</param>
    /// <param name="model">What they go into; null when that is left open.</param>
    /// <param name="catalogue">What can be named.</param>
    /// <param name="findings">Where faults go.</param>
    public static ImmutableArray<CardModel>? Bind(MapNode map, DeviceModel? model, Catalogue catalogue, FindingSink findings)
    {
        var isFaulty = false;
        var cards = ImmutableArray.CreateBuilder<CardModel>();
        foreach (var text in map.Texts("cards"))
        {
            var words = text.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            var times = 1L;
            var understood = words.Length == 1
                || (words.Length == 2
                    && words[1].StartsWith('x')
                    && Numerals.TryWhole(words[1].AsSpan(1), out times)
                    && times is >= 1 and <= MostSlots);
            if (!understood)
            {
                findings.Add(NotationFindings.ValueUnreadable, text.Span,
                    $"'{text.Value}' is no card; write its name, or 'NAME x4' for four alike");
                continue;
            }
            isFaulty |= catalogue.IsFaulty(words[0]);
            if (Names.Item<CardModel>(catalogue, "card", words[0], text.Span, findings) is not { } card) continue;
            for (var i = 0; i < times; i++) cards.Add(card);
        }
        if (isFaulty) return null;
        if (model is null || cards.Count <= model.Slots) return cards.ToImmutable();
        var given = cards.Count == 1 ? "card is" : "cards are";
        var slots = model.Slots == 0 ? "no slot" : model.Slots + " slots";
        findings.Add(ModelFindings.SlotsExceeded, map.SpanOf("cards"),
            $"{cards.Count} {given} given and {model.Name} has {slots}; take cards out, or a model with more slots");
        return [.. cards.Take(model.Slots)];
    }
}
