namespace Lanewright.Tests.Workbench;

/// <summary>Tests in the browser share one, and run when nothing else does: what they measure should be the workbench.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class BrowserCollection : ICollectionFixture<Chromium>
{
    public const string Name = "browser";
}
