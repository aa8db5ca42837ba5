using System.Security.Cryptography;
using System.Text;

namespace Lanewright.Workbench.Door;

/// <summary>What lets people in from other machines. Kept as a slow hash with a salt (PBKDF2 of RFC 8018 with HMAC-SHA-256), so that
/// neither memory nor time tells it.</summary>
internal sealed class Passphrase
{
    private const int SaltBytes = 16;
    private const int HashBytes = 32;

    /// <summary>As the guide to storing passwords of OWASP has it for this hash.</summary>
    private const int Rounds = 600_000;

    private readonly byte[] salt = RandomNumberGenerator.GetBytes(SaltBytes);
    private readonly byte[] hash;

    /// <summary>Takes the passphrase.</summary>
    public Passphrase(string text) => hash = HashOf(text);

    /// <summary>Whether a text is the passphrase. Takes a moment, and the same whatever the text is.</summary>
    public bool Is(string text) => CryptographicOperations.FixedTimeEquals(HashOf(text), hash);

    private byte[] HashOf(string text) =>
        Rfc2898DeriveBytes.Pbkdf2(Encoding.UTF8.GetBytes(text.Trim()), salt, Rounds, HashAlgorithmName.SHA256, HashBytes);
}
