namespace Lanewright.Workbench;

/// <summary>The workbench cannot open; the message says why and what to do.</summary>
public sealed class WorkbenchFault : Exception
{
    /// <summary>Takes the message.</summary>
    public WorkbenchFault(string message)
        : base(message)
    {
    }
}
