namespace Lanewright.Engineering.Links;

/// <summary>The names of the comparisons a link goes through, in their order.</summary>
public static class CheckNames
{
    /// <summary>The module's body against the cage.</summary>
    public const string ModuleFit = "module-fit";

    /// <summary>The module's power against the cage.</summary>
    public const string ModulePower = "module-power";

    /// <summary>The module's power against its declared class.</summary>
    public const string PowerClass = "power-class";

    /// <summary>A module that starts in low power against a platform that raises it.</summary>
    public const string HighPower = "high-power";

    /// <summary>A module in an adapter against a platform that knows adapters.</summary>
    public const string Adapter = "adapter";

    /// <summary>The split against the platform's list.</summary>
    public const string PortMode = "port-mode";

    /// <summary>The module's electrical interface against lanes and signals of the cage.</summary>
    public const string HostInterface = "host-interface";

    /// <summary>The module's electrical lanes against its media lanes.</summary>
    public const string Gearbox = "gearbox";

    /// <summary>Who makes the code of the media, by lanes and by the catalogue.</summary>
    public const string ModuleFec = "module-fec";

    /// <summary>Lanes that share a fibre against a split.</summary>
    public const string SharedFibre = "shared-fibre";

    /// <summary>Single mode against multimode.</summary>
    public const string FibreKind = "fibre-kind";

    /// <summary>Number of optical lanes.</summary>
    public const string MediaLanes = "media-lanes";

    /// <summary>Symbols per second of each lane.</summary>
    public const string LaneBaud = "lane-baud";

    /// <summary>Modulation of each lane.</summary>
    public const string LaneModulation = "lane-modulation";

    /// <summary>Wavelengths of each lane.</summary>
    public const string WavelengthPlan = "wavelength-plan";

    /// <summary>Code on the wire.</summary>
    public const string WireFec = "wire-fec";

    /// <summary>Code the port must set.</summary>
    public const string HostFec = "host-fec";

    /// <summary>Draft standards against the policy.</summary>
    public const string Draft = "draft";

    /// <summary>Cord ends against module openings.</summary>
    public const string Connector = "connector";

    /// <summary>Polish of cord and opening.</summary>
    public const string Polish = "polish";

    /// <summary>Alignment pins of cord and opening.</summary>
    public const string Pins = "pins";

    /// <summary>A split at both ends against what can be bought in one piece.</summary>
    public const string FanOut = "fan-out";

    /// <summary>The rear of cassettes against the trunks plugged into them.</summary>
    public const string CassetteFit = "cassette-fit";

    /// <summary>Transmitters against receivers, lane by lane, through the trunks on the way.</summary>
    public const string Polarity = "polarity";

    /// <summary>Channel insertion loss.</summary>
    public const string ChannelLoss = "channel-loss";

    /// <summary>Channel loss against what this transmitter and this receiver allow.</summary>
    public const string PowerBudget = "power-budget";

    /// <summary>Length against reach.</summary>
    public const string Reach = "reach";

    /// <summary>Length against the shortest link.</summary>
    public const string MinimumLength = "minimum-length";

    /// <summary>Largest dispersion.</summary>
    public const string DispersionPositive = "dispersion-positive";

    /// <summary>Most negative dispersion.</summary>
    public const string DispersionNegative = "dispersion-negative";

    /// <summary>Differential group delay.</summary>
    public const string Dgd = "dgd";

    /// <summary>Highest power at the receiver.</summary>
    public const string Overload = "overload";

    /// <summary>Power that destroys the receiver.</summary>
    public const string Damage = "damage";

    /// <summary>Each reflection against the rule for their number.</summary>
    public const string Reflectance = "reflectance";

    /// <summary>All reflections together.</summary>
    public const string ReturnLoss = "return-loss";

    /// <summary>Bound on the penalty of multipath interference; advice only.</summary>
    public const string Interference = "interference";

    /// <summary>Loss of a copper assembly at half the symbol rate.</summary>
    public const string CopperLoss = "copper-loss";

    /// <summary>Copper length against the project's own limit.</summary>
    public const string CopperPractice = "copper-practice";

    /// <summary>Code that copper of this loss needs.</summary>
    public const string CopperFec = "copper-fec";

    /// <summary>Auto-negotiation at both ends.</summary>
    public const string Autonegotiation = "autonegotiation";

    /// <summary>A fixed code against auto-negotiation, which agrees on one.</summary>
    public const string NegotiatedCode = "negotiated-code";

    /// <summary>Link training at both ends.</summary>
    public const string Training = "training";

    /// <summary>Plug and bend against the space behind the door.</summary>
    public const string BendSpace = "bend-space";

    /// <summary>The habit of a wide bend for thick copper; advice only.</summary>
    public const string ThickCopperBend = "thick-copper-bend";

    /// <summary>A fixed length against the way the cable has to go.</summary>
    public const string FixedLength = "fixed-length";

    /// <summary>Delay against the link's own limit.</summary>
    public const string Latency = "latency";

    /// <summary>A medium the policy forbids.</summary>
    public const string Forbidden = "forbidden-medium";
}
