namespace Lanewright.Cli;

/// <summary>What the program tells its caller.</summary>
internal static class ExitCodes
{
    /// <summary>No error was found.</summary>
    public const int NoErrors = 0;

    /// <summary>Errors were found in the plan, or the question was answered with no.</summary>
    public const int ErrorsFound = 1;

    /// <summary>The command could not run: wrong usage, or a file that cannot be read or written.</summary>
    public const int CouldNotRun = 2;
}
