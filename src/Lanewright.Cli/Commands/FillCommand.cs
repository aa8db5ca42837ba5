using System.CommandLine;
using Lanewright.Cli.Printing;
using Lanewright.Deliverables.Json;
using Lanewright.Engineering.Pathways;
using Lanewright.Quantities;
using Lanewright.Standards;
using Lanewright.Text;

namespace Lanewright.Cli.Commands;

/// <summary><c>fill</c>: how many cables alike a tray or a duct takes.</summary>
internal sealed class FillCommand
{
    private readonly Option<string?> tray = new("--tray") { Description = "inside width and depth of a tray, such as 300mmx100mm" };
    private readonly Option<string?> duct = new("--duct") { Description = "instead: inside diameter of a duct, such as 32mm" };
    private readonly Option<string?> cable = new("--cable") { Description = "outside diameter of a cable, such as 7.9mm", Required = true };
    private readonly Option<int> cables = new("--cables")
    {
        Description = "cables to lay; 1", DefaultValueFactory = _ => 1,
    };
    private readonly Option<bool> json = CommonOptions.Json();

    /// <summary>The command.</summary>
    public static Command Create()
    {
        var options = new FillCommand();
        var command = new Command("fill", "tell how many cables alike a tray or a duct takes, and how large one has to be")
        {
            options.tray, options.duct, options.cable, options.cables, options.json,
        };
        command.SetAction(options.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var room = Room(parsed);
        if (parsed.GetValue(json)) Screen.Document(stream => ReckoningJson.Write(room, stream));
        else Print(room);
        return room.Holds ? ExitCodes.NoErrors : ExitCodes.ErrorsFound;
    }

    private CableRoom Room(ParseResult parsed)
    {
        if (parsed.GetValue(tray) is null == parsed.GetValue(duct) is null) throw new UsageFault("give one of --tray and --duct");
        var count = parsed.GetValue(cables);
        if (count is < 1 or > MostCables) throw new UsageFault($"--cables lies between 1 and {Numerals.Whole(MostCables)}");
        var (width, depth) = Inside(parsed);
        return new CableRoom(width, depth, Thick(QuantityOptions.RequiredLength(parsed, cable), cable), count, StandardsLibrary.Shipped);
    }

    private (Length Width, Length? Depth) Inside(ParseResult parsed)
    {
        if (parsed.GetValue(tray) is not { } text) return (Thick(QuantityOptions.RequiredLength(parsed, duct), duct), null);
        var sides = text.Split('x', StringSplitOptions.TrimEntries);
        return sides.Length == 2 && Side(sides[0]) is { } width && Side(sides[1]) is { } depth
            ? (Thick(width, tray), Thick(depth, tray))
            : throw new UsageFault($"--tray '{text}' does not read as width and depth; write 300mmx100mm");
    }

    private static Length? Side(string text) =>
        UnitText.TryRead(text, UnitText.Lengths, out var metres) && metres >= 0 ? Length.FromMetres(metres) : null;

    private static Length Thick(Length length, Option option) =>
        length.Metres is > 0 and <= Widest ? length : throw new UsageFault($"{option.Name} lies above 0 and up to {Widest} m");

    private static void Print(CableRoom room)
    {
        var rows = new List<IReadOnlyList<string>>();
        if (room.Planned is { } planned) rows.Add(Row("as planned", planned, room.CablesAt(planned.Value), room));
        rows.Add(Row("at the most", room.Most, room.AtMost, room));
        Screen.Print(["", "fill", "cables", room.IsDuct ? "inside diameter wanted" : "cross-section wanted", "source", "known"], rows);
        Screen.Line($"{Numerals.Whole(room.Cables)} of {Numerals.Unit(room.Cable.Millimetres, "mm")} fill "
            + $"{Numerals.Shown(room.Fill.Percent, "%")} of {Numerals.Shown(room.SquareMillimetres, "mm2")}"
            + (room.Holds ? "" : room.Enters ? ": more than may lie in it"
                : $": a cable is thicker than the {(room.IsDuct ? "duct is wide" : "tray is wide or deep")}"));
        if (room.Jam is { } jam && JamRatio.MayJam(jam, room.Standards))
            Screen.Line($"three cables in a duct {Numerals.Plain(Math.Round(jam, 2))} times as wide as one may jam while they are pulled");
        Screen.Line(room.IsDuct
            ? "limits of ducts are practice for cables of data, and openings in rated walls have lower ones of their own: fire-stopping is "
                + "for qualified persons under the local code"
            : "a tray reckoned full to the half is full to the brim: round cables leave gaps between them");
    }

    private static IReadOnlyList<string> Row(string what, Known<double> limit, int most, CableRoom room)
    {
        var wanted = room.WantedFor(limit.Value);
        return
        [
            what, Numerals.Unit(limit.Value * 100, "%"), Numerals.Whole(most),
            room.IsDuct
                ? Numerals.Shown(Math.Sqrt(wanted * 4 / Math.PI), "mm")
                : Numerals.Shown(wanted, "mm2"),
            limit.Source.ToString(), Marks.Name(limit.Source.Mark),
        ];
    }

    private const int MostCables = 1_000_000;
    private const double Widest = 10;
}
