using System.Net;
using Lanewright.Workbench.Door;

namespace Lanewright.Workbench;

/// <summary>Another address than loopback to serve the workbench on, and what lets people in there.</summary>
public sealed class Elsewhere
{
    /// <summary>Fewest characters of a passphrase.</summary>
    public const int ShortestPassphrase = 12;

    private const int FewestKinds = 5;

    private Elsewhere(IPAddress address, Passphrase passphrase)
    {
        Address = address;
        Passphrase = passphrase;
    }

    /// <summary>The address; that of all interfaces for any address this machine has.</summary>
    public IPAddress Address { get; }

    /// <summary>What lets people in.</summary>
    internal Passphrase Passphrase { get; }

    /// <summary>Takes an address and a passphrase.</summary>
    /// <exception cref="WorkbenchFault">The passphrase is too easy to guess, or none.</exception>
    public static Elsewhere Of(IPAddress address, string passphrase)
    {
        if (passphrase.Trim().Length < ShortestPassphrase || passphrase.Distinct().Count() < FewestKinds)
            throw new WorkbenchFault($"the passphrase is too easy to guess: take {ShortestPassphrase} characters or more, such as four "
                + "words that have nothing to do with one another");
        return new Elsewhere(address, new Passphrase(passphrase));
    }
}
