using System.Collections.Immutable;
using Lanewright.Model.Catalogues;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Engineering.Links;

/// <summary>Holds a module, or the end of a cable, against the cage it goes into.</summary>
public static class HostSideChecks
{
    /// <summary>The comparisons of one end with a module.</summary>
    public static ImmutableArray<Check> OfModule(EndUse end, ModuleModel module, Application application, string side)
    {
        var checks = ImmutableArray.CreateBuilder<Check>();
        checks.AddRange(Fit(end, module.FormFactor));
        checks.AddRange(Power(end, module.Power, CatalogueFacts.MarkOf(module)));
        checks.AddRange(PowerClass(module));
        checks.AddRange(HighPower(end, module.FormFactor, module.Power));
        checks.Add(PortMode(end));
        checks.Add(Lanes(end, module.FormFactor, ElectricalLanes.Of(application.Host), application.Instances));
        checks.AddRange(Gearboxes(module, application));
        return [.. checks.Select(c => c with { End = side })];
    }

    /// <summary>The comparisons of one end with the end of an assembly.</summary>
    /// <param name="end">The cage.</param>
    /// <param name="formFactor">Body of the cable's end.</param>
    /// <param name="power">What that end draws, with the catalogue as its source.</param>
    /// <param name="lanes">What the port must run.</param>
    /// <param name="side">Which end it is.</param>
    public static ImmutableArray<Check> OfAssembly(
        EndUse end, FormFactor formFactor, Known<Watts> power, ElectricalLanes lanes, string side)
    {
        var checks = ImmutableArray.CreateBuilder<Check>();
        checks.AddRange(Fit(end, formFactor));
        checks.AddRange(Power(end, power.Value, power.Source.Mark));
        checks.AddRange(HighPower(end, formFactor, power.Value));
        checks.Add(PortMode(end));
        checks.Add(Lanes(end, formFactor, lanes, end.Mode.Ways, lanes.IsPassive));
        return [.. checks.Select(c => c with { End = side })];
    }

    /// <summary>Whether a body goes into a cage, with an adapter if one is planned.</summary>
    public static IEnumerable<Check> Fit(EndUse end, FormFactor module)
    {
        var cage = end.Cage.FormFactor;
        if (end.UsesAdapter)
        {
            var adapts = cage.AcceptsByAdapter.Contains(module.Name);
            yield return Check.Of(CheckNames.ModuleFit, adapts, cage.Definition,
                adapts ? "" : $"no adapter takes {Article(module.Name)} into {Article(cage.Name)} cage");
            yield return Check.Of(CheckNames.Adapter, end.Cage.TakesAdapters, Platform(end),
                end.Cage.TakesAdapters ? "" : "the platform does not know modules in adapters: it would read the wrong memory map");
            yield break;
        }
        if (cage.Accepts.Contains(module.Name))
        {
            yield return Check.Of(CheckNames.ModuleFit, true, cage.Definition);
            yield break;
        }
        var hint = cage.AcceptsByAdapter.Contains(module.Name) ? "; an adapter would take it" : "";
        yield return Check.Of(CheckNames.ModuleFit, false, cage.Definition,
            $"{Article(module.Name)} module does not go into {Article(cage.Name)} cage{hint}");
    }

    /// <summary>What a platform says of its cages, as well known as the catalogue that says it.</summary>
    private static Citation Platform(EndUse end) => new("port list of the platform", "", "", end.Cage.Mark);

    private static IEnumerable<Check> Power(EndUse end, Watts power, Mark mark)
    {
        if (end.PowerLimit is { } limit)
            yield return Check.AtMost(CheckNames.ModulePower, power.Value, new Known<double>(limit.Value, Platform(end)), "W", mark);
    }

    /// <summary>A class bounds what a module may draw; the open class draws what it declares.</summary>
    private static IEnumerable<Check> PowerClass(ModuleModel module)
    {
        if (module.PowerClass == 0) yield break;
        var body = module.FormFactor;
        if (body.PowerOfClass(module.PowerClass) is { } most)
        {
            yield return Check.AtMost(
                CheckNames.PowerClass, module.Power.Value, most.As(w => w.Value), "W", CatalogueFacts.MarkOf(module));
            yield break;
        }
        yield return body.OpenPowerClass is { } open && (int)open.Value == module.PowerClass
            ? Check.Of(CheckNames.PowerClass, true, open.Source)
            : Check.Unknown(CheckNames.PowerClass, $"what a {body.Name} module of class {module.PowerClass} may draw is not known");
    }

    /// <summary>Modules and cable ends above what every cage gives from the start stay dark until the platform raises them.</summary>
    private static IEnumerable<Check> HighPower(EndUse end, FormFactor formFactor, Watts power)
    {
        var lowest = formFactor.PowerOfClass(LowPowerClass(formFactor));
        if (lowest is not { } limit || power <= limit.Value) yield break;
        var dark = $"{power} is above the {limit.Value} a module starts with, and this platform does not raise it: no light, no link";
        yield return Check.Of(CheckNames.HighPower, end.Cage.EnablesHighPower, limit.Source, end.Cage.EnablesHighPower ? "" : dark);
    }

    /// <summary>Four-lane modules start with class 4, all others with class 1.</summary>
    private static int LowPowerClass(FormFactor formFactor) =>
        formFactor.Lanes == 4 && formFactor.PowerOfClass(4) is not null ? 4 : 1;

    private static Check PortMode(EndUse end)
    {
        if (end.UsesAdapter) return Check.Of(CheckNames.PortMode, true, Platform(end));
        var listed = end.Cage.Modes.Contains(end.Mode);
        var list = string.Join(", ", end.Cage.Modes);
        return Check.Of(CheckNames.PortMode, listed, Platform(end),
            listed ? "" : $"the platform does not list {end.Mode} for this cage; it lists {list}");
    }

    /// <summary>An adapter leads on as many lanes as the module in it has.</summary>
    private static Check Lanes(EndUse end, FormFactor module, ElectricalLanes lanes, int instances, bool isPassive = false)
    {
        var ways = end.Mode.Ways;
        var available = end.UsesAdapter ? Math.Min(module.Lanes, end.Cage.Lanes) : end.Cage.Lanes;
        var source = lanes.Definition;
        var fault =
            instances < ways ? $"the module runs {lanes.Name} {Times(instances)} and the port is split {ways} ways"
            : lanes.Count * ways > available ? $"{ways} x {lanes.Name} {Verb(ways)} {lanes.Count * ways} lanes and the cage has {available}"
            : !(isPassive ? module.Carries(lanes.Signal) : module.Speaks(lanes.Signal))
                ? $"no {module.Name} body is made for lanes of {lanes.Signal}, which {lanes.Name} has"
            : !end.Cage.Signals.Contains(lanes.Signal) ? $"{lanes.Name} needs lanes of {lanes.Signal}; the cage runs {Rates(end.Cage)}"
            : "";
        return Check.Of(CheckNames.HostInterface, fault.Length == 0, source, fault);
    }

    /// <summary>What the catalogue says a module does, against what any module can do.</summary>
    private static IEnumerable<Check> Gearboxes(ModuleModel module, Application application)
    {
        var source = application.Host.Definition;
        if (application.Wavelength is { } wavelength)
        {
            foreach (var check in OfWavelength(module, application, wavelength)) yield return check;
            yield break;
        }
        if (application.Optical is not { } type)
        {
            var isSame = application.Copper?.Rate == application.Host.Rate;
            yield return Check.Of(CheckNames.Gearbox, isSame, source,
                isSame ? "" : $"{application.Host.Name} and {application.MediaName} do not carry the same rate");
            yield break;
        }
        var gearbox = Gearbox.Between(application.Host, type);
        yield return Check.Of(CheckNames.Gearbox, gearbox.Exists, source, gearbox.Note);
        if (!gearbox.Exists) yield break;
        if (gearbox.MakesCode && !module.HasOwnFec)
        {
            yield return Check.Of(CheckNames.ModuleFec, false, source,
                $"{application}: the module has to make {type.Fec} itself, and the catalogue does not say that it does");
        }
        else if (module.HasOwnFec && !module.Applications.Any(MayMakeCode))
        {
            yield return Check.Of(CheckNames.ModuleFec, false, source,
                $"{application}: the code passes through from host to media, and the catalogue says that the module makes its own");
        }
    }

    /// <summary>A module for a wavelength carries the rate of its host side, and makes the code of its type itself.</summary>
    private static IEnumerable<Check> OfWavelength(ModuleModel module, Application application, WavelengthType type)
    {
        var isSame = type.Rate == application.Host.Rate;
        yield return Check.Of(CheckNames.Gearbox, isSame, application.Host.Definition,
            isSame ? "" : $"{application.Host.Name} and {type.Name} do not carry the same rate");
        if (type.Code is "" or NoCode || module.HasOwnFec) yield break;
        yield return Check.Of(CheckNames.ModuleFec, false, application.Host.Definition,
            $"{application}: the module has to make {type.Code} itself, and the catalogue does not say that it does");
    }

    private const string NoCode = "none";

    private static bool MayMakeCode(Application application) =>
        application.Optical is { } type
        && Gearbox.Between(application.Host, type) is var gearbox
        && (gearbox.MakesCode || gearbox.MayMakeCode);

    private static string Rates(CageModel cage) => string.Join(", ", cage.LaneRates);

    private static string Times(int count) => count == 1 ? "once" : $"{count} times";

    private static string Verb(int count) => count == 1 ? "needs" : "need";

    /// <summary>The name with its article, by the sound of its first letter.</summary>
    public static string Article(string name) => (name[0] is 'S' or 'O' or 'R' ? "an " : "a ") + name;
}
