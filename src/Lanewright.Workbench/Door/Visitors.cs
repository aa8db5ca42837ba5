using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;

namespace Lanewright.Workbench.Door;

/// <summary>Those who gave the passphrase. A browser keeps a random word; here only its hash is kept, for a working day.</summary>
internal sealed class Visitors(TimeProvider clock)
{
    /// <summary>How long a visit lasts.</summary>
    public static readonly TimeSpan Visit = TimeSpan.FromHours(12);

    private const int WordBytes = 32;
    private readonly ConcurrentDictionary<string, DateTimeOffset> until = new(StringComparer.Ordinal);

    /// <summary>Lets somebody in; the word to keep.</summary>
    public string LetIn()
    {
        var now = clock.GetUtcNow();
        foreach (var (known, end) in until)
            if (end < now) until.TryRemove(known, out _);
        var word = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(WordBytes));
        until[HashOf(word)] = now + Visit;
        return word;
    }

    /// <summary>Whether a word is that of a visitor.</summary>
    public bool Knows(string? word) => word is { Length: WordBytes * 2 } && until.TryGetValue(HashOf(word), out var end)
        && end >= clock.GetUtcNow();

    private static string HashOf(string word) => Convert.ToHexString(SHA256.HashData(Encoding.ASCII.GetBytes(word)));
}
