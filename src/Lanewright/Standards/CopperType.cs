using Lanewright.Quantities;
using Lanewright.Text;

namespace Lanewright.Standards;

/// <summary>A copper interface type: twinax assemblies and twisted pair.</summary>
public sealed class CopperType
{
    /// <summary>Reads a type from its rows.</summary>
    public CopperType(FactSheet sheet)
    {
        Sheet = sheet;
        Lanes = sheet.Whole("lanes", 1);
        Signal = new LaneSignal(sheet.Baud("baud")?.Value ?? default, LaneSignal.ReadModulation(sheet.Word("modulation")));
        Rate = sheet.Rate("rate");
    }

    /// <summary>All rows.</summary>
    public FactSheet Sheet { get; }

    /// <summary>The name, such as <c>400GBASE-CR4</c>.</summary>
    public string Name => Sheet.Subject;

    /// <summary>Whether it runs on twisted pair rather than twinax.</summary>
    public bool IsTwistedPair => Sheet.Word("medium") == "twisted-pair";

    /// <summary>Whether the document was a draft when its values were taken.</summary>
    public bool IsDraft => Definition.Document.Contains("P802.3", StringComparison.Ordinal);

    /// <summary>Lanes in each direction.</summary>
    public int Lanes { get; }

    /// <summary>What a lane carries.</summary>
    public LaneSignal Signal { get; }

    /// <summary>The rate of the MAC.</summary>
    public BitRate Rate { get; }

    /// <summary>The strongest code of the type, the one its largest loss supposes.</summary>
    public string Fec => Sheet.Word("fec");

    /// <summary>Nominal longest assembly with the strongest code.</summary>
    public Known<Length>? Reach => Sheet.Length("reach");

    /// <summary>Largest assembly loss with the strongest code.</summary>
    public Known<Decibels>? LossMax => Sheet.Decibels("loss-max");

    /// <summary>Largest assembly loss with BASE-R FEC, where the type allows it.</summary>
    public Known<Decibels>? LossMaxBaseR => Sheet.Decibels("loss-max-base-r");

    /// <summary>Largest assembly loss without any code, where the type allows it.</summary>
    public Known<Decibels>? LossMaxWithoutFec => Sheet.Decibels("loss-max-none");

    /// <summary>Nominal longest assembly with BASE-R FEC, where the type allows it.</summary>
    public Known<Length>? ReachBaseR => Sheet.Length("reach-base-r");

    /// <summary>Nominal longest assembly without any code, where the type allows it.</summary>
    public Known<Length>? ReachWithoutFec => Sheet.Length("reach-none");

    /// <summary>Whether link training must run.</summary>
    public bool NeedsTraining => Sheet.Word("training") == "yes";

    /// <summary>Whether auto-negotiation exists for it.</summary>
    public bool HasAutonegotiation => Sheet.Word("autonegotiation") is not ("none" or "");

    /// <summary>Where the type is defined.</summary>
    public Citation Definition => Sheet.SourceOf("rate");
}
