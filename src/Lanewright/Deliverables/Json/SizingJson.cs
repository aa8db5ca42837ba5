using System.Collections.Immutable;
using System.Text.Json;
using Lanewright.Engineering.Fabrics;
using Lanewright.Model.Wanted;
using Lanewright.Quantities;

namespace Lanewright.Deliverables.Json;

/// <summary>What fabric to buy, as JSON.</summary>
public static class SizingJson
{
    /// <summary>Writes a study.</summary>
    /// <param name="study">The study.</param>
    /// <param name="currency">The unit of its prices.</param>
    /// <param name="withBreakEvens">Whether to find and write what would change the answer.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(FabricStudy study, string currency, bool withBreakEvens, Stream stream) => JsonText.Write(stream, writer =>
    {
        writer.WriteStartObject();
        writer.WriteString("currency", currency);
        writer.WriteStartArray("options");
        foreach (var option in study.Answer.Options) FabricOptionJson.Write(writer, option);
        writer.WriteEndArray();
        Money(writer, "lowerBound", study.Answer.LowerBound);
        Lost(writer, study.Answer.Lost);
        writer.WriteStartArray("conflicts");
        foreach (var conflict in study.Conflicts)
        {
            writer.WriteStartArray();
            foreach (var wish in conflict) writer.WriteStringValue(wish.Key);
            writer.WriteEndArray();
        }
        writer.WriteEndArray();
        Relaxations(writer, study.Relaxations);
        writer.WriteBoolean("areConflictsProven", study.AreConflictsProven);
        writer.WriteBoolean("areRelaxationsProven", study.IsProven);
        BreakEvens(writer, withBreakEvens ? study.BreakEvens : []);
        writer.WriteEndObject();
    });

    /// <summary>An amount of money as a number, or null.</summary>
    internal static void Money(Utf8JsonWriter writer, string name, Money? amount)
    {
        if (amount is { } money) writer.WriteNumber(name, money.Units);
        else writer.WriteNull(name);
    }

    private static void Lost(Utf8JsonWriter writer, ImmutableArray<ShapeLost> lost)
    {
        writer.WriteStartArray("lost");
        foreach (var shape in lost)
        {
            writer.WriteStartObject();
            writer.WriteString("shape", FabricShapes.Word(shape.Shape));
            writer.WriteString("reason", shape.Reason);
            Money(writer, "bound", shape.Bound);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    private static void Relaxations(Utf8JsonWriter writer, ImmutableArray<Relaxation> relaxations)
    {
        writer.WriteStartArray("relaxations");
        foreach (var relaxation in relaxations)
        {
            writer.WriteStartObject();
            writer.WriteString("wish", relaxation.Wish.Key);
            writer.WriteString("wanted", relaxation.Wish.Text);
            writer.WriteString("possible", relaxation.Possible);
            Figures(writer, relaxation.Figures);
            writer.WriteString("by", relaxation.By);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    /// <summary>The same in numbers, and what has to be allowed beside, where there is either.</summary>
    private static void Figures(Utf8JsonWriter writer, WishFigures? figures)
    {
        Number("wantedValue", figures?.Wanted);
        Number("possibleValue", figures?.Possible);
        writer.WriteString("unit", figures?.Unit ?? "");
        if (figures is null) return;
        if (!figures.ByKind.IsEmpty)
        {
            writer.WriteStartObject("possibleByKind");
            foreach (var (kind, value) in figures.ByKind) writer.WriteNumber(kind, value);
            writer.WriteEndObject();
        }
        if (figures.Beside.IsEmpty) return;
        writer.WriteStartArray("allowBeside");
        foreach (var word in figures.Beside) writer.WriteStringValue(word);
        writer.WriteEndArray();

        void Number(string name, decimal? value)
        {
            if (value is { } number) writer.WriteNumber(name, decimal.Round(number, 6));
            else writer.WriteNull(name);
        }
    }

    private static void BreakEvens(Utf8JsonWriter writer, ImmutableArray<BreakEven> breakEvens)
    {
        writer.WriteStartArray("breakEvens");
        foreach (var breakEven in breakEvens)
        {
            writer.WriteStartObject();
            writer.WriteString("quantity", BreakEvenWords.Key(breakEven.Quantity));
            writer.WriteNumber("now", breakEven.Now);
            writer.WriteStartArray("stretches");
            foreach (var stretch in breakEven.Stretches) Stretch(writer, stretch);
            writer.WriteEndArray();
            writer.WriteBoolean("isWholeRangeProven", breakEven.IsWholeRangeProven);
            if (!breakEven.IsChain) writer.WriteNumber("valuesSolved", breakEven.Asked);
            writer.WriteNumber("gap", Math.Round(breakEven.Gap.Value, 6));
            writer.WriteString("proof", BreakEvenWords.Proof(breakEven));
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    private static void Stretch(Utf8JsonWriter writer, BreakEvenStretch stretch)
    {
        writer.WriteStartObject();
        writer.WriteNumber("from", decimal.Round(stretch.From, 6));
        writer.WriteNumber("to", decimal.Round(stretch.To, 6));
        writer.WriteString("shape", stretch.Shape is { } shape ? FabricShapes.Word(shape) : null);
        writer.WriteString("option", stretch.Name);
        writer.WriteBoolean("isProven", stretch.IsProven);
        Money(writer, "priceOverYearsFrom", stretch.CostFrom);
        Money(writer, "priceOverYearsTo", stretch.CostTo);
        writer.WriteEndObject();
    }
}
