using Lanewright.Model.Links;

namespace Lanewright.Model.Binding;

/// <summary>Cuts the two sides of a statement into runs of consecutive devices.</summary>
internal static class LinkRuns
{
    /// <summary>Runs of the first side; as many as the second has when their length is left open.</summary>
    public static int OfFrom(LinkStatement statement) => statement.FromRun is { } length
        ? Runs(statement.From.Devices.Length, length)
        : OfTo(statement);

    /// <summary>Runs of the second side.</summary>
    public static int OfTo(LinkStatement statement) => Runs(statement.To.Devices.Length, statement.ToRun);

    /// <summary>A run of the first side, counted from 0: its first place and the place after its last.</summary>
    public static (int Start, int End) From(LinkStatement statement, int run)
    {
        var devices = statement.From.Devices.Length;
        if (statement.FromRun is { } length) return Cut(devices, length, run);
        var runs = OfTo(statement);
        return ((int)((long)devices * run / runs), (int)((long)devices * (run + 1) / runs));
    }

    /// <summary>A run of the second side, counted from 0: its first place and the place after its last.</summary>
    public static (int Start, int End) To(LinkStatement statement, int run) => Cut(statement.To.Devices.Length, statement.ToRun, run);

    private static (int Start, int End) Cut(int devices, int length, int run) =>
        ((int)Math.Min(devices, (long)run * length), (int)Math.Min(devices, (run + 1L) * length));

    private static int Runs(int devices, int length) => (int)(((long)devices + length - 1) / length);
}
