using Lanewright.Quantities;

namespace Lanewright.Workbench.Desk;

/// <summary>The right to keep typed texts beside a plan, which one workbench has at a time: two would each throw away what the other
/// keeps. It is a lock of the operating system, so that it ends with the program that has it, however that ends. Its file stays:
/// removing it would let two programs each lock one of their own.</summary>
internal sealed class FolderClaim : IDisposable
{
    private const string Place = ".lanewright/open";
    private const string PortPlace = ".lanewright/open.port";

    /// <summary>What operating systems answer of a file that another program has locked, each by a number of its own.</summary>
    private static readonly int[] Locked = [11, 35, unchecked((int)0x80070020)];

    private readonly PlanFolder folder;
    private readonly FileStream? held;

    private FolderClaim(PlanFolder folder, FileStream? held)
    {
        this.folder = folder;
        this.held = held;
    }

    /// <summary>Claims a folder. One that cannot be written to is nobody's: no text is kept there.</summary>
    /// <exception cref="WorkbenchFault">Another workbench has it.</exception>
    public static FolderClaim On(PlanFolder folder)
    {
        try
        {
            Keepsakes.Ignore(folder);
            var path = folder.Locate(Place) ?? throw new UnauthorizedAccessException();
            var claim = new FolderClaim(folder, new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
            claim.Forget();
            return claim;
        }
        catch (IOException fault) when (Locked.Contains(fault.HResult))
        {
            var told = (folder.Read(PortPlace, out _) ?? "").Trim();
            var where = Numerals.TryWhole(told, out var port) ? $", on port {Numerals.Whole(port)}" : "";
            throw new WorkbenchFault($"the plans of the folder '{folder.Root}' are open in another workbench{where}; go on in its window, "
                + "or end it first");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return new FolderClaim(folder, null);
        }
    }

    /// <summary>Tells who else wants to open the folder where it is open.</summary>
    public void Tell(int port) => Try(() => folder.Write(PortPlace, Numerals.Whole(port) + "\n"));

    /// <inheritdoc/>
    public void Dispose()
    {
        if (held is null) return;
        Forget();
        held.Dispose();
    }

    private void Forget() => Try(() => folder.Remove(PortPlace));

    /// <summary>The port is a kindness: without it the folder is claimed all the same.</summary>
    private void Try(Action write)
    {
        if (held is not { CanWrite: true }) return;
        try
        {
            write();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // The folder could be written to a moment ago; what is typed will tell that it cannot any more.
        }
    }
}
