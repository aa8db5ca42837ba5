using Lanewright.Deliverables.Tables;
using Lanewright.Engineering.Lines;
using Lanewright.Engineering.Links;
using Lanewright.Rules;
using Lanewright.Text;

namespace Lanewright.Deliverables;

/// <summary>A row a channel of every line and route: frequency, power, noise and margin at the receiver.</summary>
public static class LinesView
{
    /// <summary>The table.</summary>
    public static TableView Of(DesignedPlan designed) => new("lines",
    [
        new("line", 16), new("route", 7, ColumnKind.Whole), new("spans", 24), new("scheme", 26), new("type", 22), new("verdict", 9),
        new("mark", 15), new("thz", 10, ColumnKind.Real), new("nm", 10, ColumnKind.Real), new("launch-dbm", 10, ColumnKind.Real),
        new("received-dbm", 11, ColumnKind.Real), new("osnr-db", 9, ColumnKind.Real), new("gsnr-db", 9, ColumnKind.Real),
        new("needed-osnr-db", 12, ColumnKind.Real), new("margin-db", 9, ColumnKind.Real), new("dispersion-ps-nm", 12, ColumnKind.Real),
        new("latency-us", 10, ColumnKind.Real),
    ], () => designed.Lines.Value.Lines.SelectMany(Rows));

    private static IEnumerable<Cell[]> Rows(LineResult line)
    {
        for (var route = 0; route < line.Routes.Length; route++)
        {
            var design = line.Routes[route].Answer.Design;
            foreach (var channel in design.Channels)
            {
                yield return
                [
                    line.Statement.Name, route + 1, line.Routes[route].Name, LineWords.Name(design.Scheme), design.TypeName,
                    Checks.Word(design.Verdict), Marks.Name(design.Mark), Math.Round(channel.Frequency.Terahertz, 5),
                    Math.Round(channel.Frequency.Wavelength.Nanometres, 3), Of(design.Launch?.Dbm), Of(channel.Received?.Dbm),
                    Of(channel.Osnr?.Value), Of(channel.GsnrInReference?.Value), Of(channel.Required?.Value), Of(channel.Margin?.Value),
                    Of(channel.Dispersion?.PicosecondsPerNanometre), Of(design.Latency?.Value.Nanoseconds / 1000),
                ];
            }
        }
    }

    private static Cell Of(double? value) => value is { } v ? Math.Round(v, 2) : Cell.Empty;
}
