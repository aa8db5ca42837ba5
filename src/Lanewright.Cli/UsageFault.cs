namespace Lanewright.Cli;

/// <summary>A command that cannot run as it was written; the message says what to write.</summary>
internal sealed class UsageFault : Exception
{
    /// <summary>Takes the message.</summary>
    public UsageFault(string message)
        : base(message)
    {
    }
}
