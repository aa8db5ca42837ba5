using Lanewright.Quantities;

namespace Lanewright.Standards;

/// <summary>What one lane carries: two lanes understand each other only when both parts are equal.</summary>
/// <param name="Baud">Symbols per second.</param>
/// <param name="Modulation">Bits a symbol.</param>
public readonly record struct LaneSignal(Baud Baud, Modulation Modulation)
{
    /// <summary>Bits per second of a lane; 0 where the modulation does not say how many bits a symbol has.</summary>
    public long BitsPerSecond => Baud.SymbolsPerSecond * Modulation switch { Modulation.Nrz => 1, Modulation.Pam4 => 2, _ => 0 };

    /// <summary>Rate and modulation in words.</summary>
    public override string ToString() => $"{Baud} {Name(Modulation)}";

    /// <summary>The modulation as it is written.</summary>
    public static string Name(Modulation modulation) => modulation switch
    {
        Modulation.Nrz => "NRZ",
        Modulation.Pam4 => "PAM4",
        Modulation.Coherent => "coherent",
        _ => "unknown modulation",
    };

    /// <summary>Reads a modulation as standards tables write it.</summary>
    public static Modulation ReadModulation(string word) => word switch
    {
        "NRZ" => Modulation.Nrz,
        "PAM4" => Modulation.Pam4,
        "" => Modulation.Unknown,
        _ => Modulation.Coherent,
    };
}
