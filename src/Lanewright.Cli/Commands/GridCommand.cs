using System.Collections.Immutable;
using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Lines;
using Lanewright.Quantities;
using Lanewright.Standards;

namespace Lanewright.Cli.Commands;

/// <summary><c>grid</c>: channel plans of wavelengths.</summary>
internal sealed class GridCommand
{
    private readonly Option<string?> spacing = new("--spacing") { Description = "spacing of a dense plan, such as 100GHz; 100GHz" };
    private readonly Option<string?> first = new("--first") { Description = "lowest channel of the plan, such as 193.1THz" };
    private readonly Option<int?> channels = new("--channels") { Description = "how many channels; as many as the band holds" };
    private readonly Option<bool> coarse = new("--cwdm") { Description = "the coarse plan instead" };
    private readonly Option<bool> json = CommonOptions.Json();

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var options = new GridCommand();
        var command = new Command("grid", "print a channel plan of dense or coarse wavelengths")
        {
            options.spacing, options.first, options.channels, options.coarse, options.json,
        };
        command.SetAction(options.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var grid = StandardsLibrary.Shipped.Grid;
        if (parsed.GetValue(coarse)) return Coarse(parsed, grid);
        var plan = PlanOf(grid, SpacingOf(parsed, spacing), FrequencyOf(parsed, first), parsed.GetValue(channels));
        if (parsed.GetValue(json)) Screen.Document(stream => GridJson.Write(grid, plan, stream));
        else
        {
            Screen.Print(["n", "THz", "nm"], Enumerable.Range(0, plan.Channels.Length).Reverse().Select(i => (IReadOnlyList<string>)
            [
                Numerals.Whole(plan.Number(grid, i)), Numerals.Fixed(plan.Channels[i].Terahertz, 5),
                Numerals.Fixed(plan.Channels[i].Wavelength.Nanometres, 3),
            ]));
            Screen.Line($"{plan.Channels.Length} channels, {plan.Spacing} apart, n in steps of {plan.Step} from {grid.Anchor.Value}");
        }
        return ExitCodes.NoErrors;
    }

    private int Coarse(ParseResult parsed, FrequencyGrid grid)
    {
        if (parsed.GetValue(spacing) is not null || parsed.GetValue(first) is not null || parsed.GetValue(channels) is not null)
            throw new UsageFault("the coarse plan is one: --cwdm goes with --json alone");
        ImmutableArray<Wavelength> all = [.. Enumerable.Range(0, grid.CoarseChannels).Select(grid.Coarse)];
        if (parsed.GetValue(json)) Screen.Document(stream => GridJson.Write(all, stream));
        else
            Screen.Print(["n", "nm"], all.Select((w, i) => (IReadOnlyList<string>)[Numerals.Whole(i), Numerals.Plain(w.Nanometres)]));
        return ExitCodes.NoErrors;
    }

    /// <summary>A spacing that has to be above nothing, 100 GHz where none is given.</summary>
    public static Frequency SpacingOf(ParseResult parsed, Option<string?> option)
    {
        if (QuantityOptions.Read(parsed, option, UnitText.Frequencies, "a spacing such as 100GHz") is not { } value)
            return FrequencyGrid.UsualSpacing;
        var step = StandardsLibrary.Shipped.Grid.FlexibleStep.Value;
        if (value < step.Gigahertz || value > 4800) throw new UsageFault($"{option.Name} lies between {step} and 4800 GHz");
        return Math.Abs(Math.IEEERemainder(value, step.Gigahertz)) < 1e-6
            ? Frequency.FromGigahertz(value)
            : throw new UsageFault($"{option.Name} {Numerals.Plain(value)}GHz lies on no grid: spacings are multiples of {step}");
    }

    /// <summary>A frequency of light, or null when not given.</summary>
    public static Frequency? FrequencyOf(ParseResult parsed, Option<string?> option) =>
        QuantityOptions.Read(parsed, option, UnitText.Frequencies, "a frequency such as 193.1THz") is { } value
            ? value > 0 ? Frequency.FromGigahertz(value) : throw new UsageFault($"{option.Name} must be above zero")
            : null;

    /// <summary>The plan that is asked for; fails the command where there is none.</summary>
    public static ChannelPlan PlanOf(FrequencyGrid grid, Frequency spacing, Frequency? first, int? count)
    {
        var room = ChannelPlan.Room(grid.BandRoom.Value, spacing);
        if (count is < 1 || count > room)
            throw new UsageFault($"{count} channels {spacing} apart do not fit; the band holds 1 to {room}");
        if (first is not { } lowest) return ChannelPlan.Middle(grid, spacing, count ?? room) ?? ChannelPlan.Whole(grid, spacing);
        if (!grid.IsOnGrid(lowest))
            throw new UsageFault($"{lowest} is on no grid: channels lie {grid.FlexibleStep.Value} apart from {grid.Anchor.Value}");
        var most = (int)Math.Floor(((grid.BandHigh.Value.Hertz - lowest.Hertz) / spacing.Hertz) + 1 + 1e-9);
        return ChannelPlan.From(grid, spacing, lowest, count ?? Math.Max(1, Math.Min(room, most)))
            ?? throw new UsageFault($"the channels leave the band; it goes from {grid.BandLow.Value} to {grid.BandHigh.Value}");
    }
}
