using Lanewright.Model.Links;

namespace Lanewright.Engineering.Choice;

/// <summary>Finds statements that ask the same of their links. What tells links apart is what is fixed, not what it is called.</summary>
internal static class StatementKinds
{
    /// <summary>For each statement the first one that asks for the same.</summary>
    public static int[] FirstAlike(IReadOnlyList<LinkStatement> statements)
    {
        var first = new Dictionary<string, int>(StringComparer.Ordinal);
        var kinds = new int[statements.Count];
        for (var i = 0; i < kinds.Length; i++)
        {
            var text = TextOf(statements[i]);
            if (!first.TryGetValue(text, out kinds[i])) first[text] = kinds[i] = i;
        }
        return kinds;
    }

    /// <summary>Everything a statement fixes, as one text: equal texts are equal questions.</summary>
    private static string TextOf(LinkStatement s) => string.Join('|', s.Rate, string.Join(',', s.Media), s.Type?.Name, s.CopperType?.Name,
        s.Assembly?.Name, s.Cord?.Name, s.Length?.Metres, string.Join(',', s.Through.Select(t => t.Name)), s.Connections,
        s.ConnectionLoss?.Value, s.Splices,
        s.SpliceLoss?.Value, s.Reflectance?.Value, s.Attenuation?.DecibelsPerKilometre, s.AttenuationAt?.Nanometres, s.MeasuredLoss?.Value,
        s.Attenuator?.Value, s.IsExisting, s.LatencyMax?.Nanoseconds, TextOf(s.From), TextOf(s.To));

    private static string TextOf(LinkEnd end) => string.Join(';', end.Module?.Name, end.Fec, end.Autonegotiation, end.UsesAdapter);
}
