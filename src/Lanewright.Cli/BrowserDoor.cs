using System.Diagnostics;

namespace Lanewright.Cli;

/// <summary>Opens the browser at an address without showing the address to other users of the machine: command lines can be read by all of
/// them, a file of one's own cannot.</summary>
internal sealed class BrowserDoor : IDisposable
{
    private readonly string file;

    private BrowserDoor(string file, bool isOpen)
    {
        this.file = file;
        IsOpen = isOpen;
    }

    /// <summary>Whether a browser was asked.</summary>
    public bool IsOpen { get; }

    /// <summary>Opens the browser.</summary>
    public static BrowserDoor Open(Uri address)
    {
        // A fresh folder that nobody else may enter; the name of the file in it is then no secret.
        var file = Path.Combine(Directory.CreateTempSubdirectory("lanewright-").FullName, "open.html");
        File.WriteAllText(file, $"<!DOCTYPE html><meta charset=\"utf-8\"><meta http-equiv=\"refresh\" content=\"0;url={address}\">"
            + $"<title>Lanewright</title><a href=\"{address}\">Lanewright</a>\n");
        try
        {
            using var started = Process.Start(new ProcessStartInfo(file) { UseShellExecute = true });
            return new BrowserDoor(file, true);
        }
        catch (Exception fault) when (fault is System.ComponentModel.Win32Exception or PlatformNotSupportedException or IOException)
        {
            return new BrowserDoor(file, false);
        }
    }

    /// <summary>Removes the file.</summary>
    public void Dispose() => Directory.Delete(Path.GetDirectoryName(file) ?? file, recursive: true);
}
