using Lanewright.Deliverables;
using Lanewright.Rules;

namespace Lanewright.Tests.Support;

/// <summary>Documents as bytes in memory.</summary>
internal static class Documents
{
    /// <summary>Every document of a judged plan, by name.</summary>
    public static SortedDictionary<string, byte[]> Of(JudgedPlan judged)
    {
        var all = new SortedDictionary<string, byte[]>(StringComparer.Ordinal);
        foreach (var document in DeliverySet.Of(judged))
        {
            using var stream = new MemoryStream();
            document.Write(stream);
            all[document.Name] = stream.ToArray();
        }
        return all;
    }

    /// <summary>Names of documents whose bytes differ, those left out on purpose aside.</summary>
    public static IEnumerable<string> Differences(JudgedPlan one, JudgedPlan other, params string[] except)
    {
        var left = Of(one);
        var right = Of(other);
        return left.Keys.Union(right.Keys).Except(except).Where(name =>
            !left.TryGetValue(name, out var a) || !right.TryGetValue(name, out var b) || !a.AsSpan().SequenceEqual(b));
    }
}
