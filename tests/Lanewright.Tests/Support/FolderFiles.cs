using Lanewright.Text;

namespace Lanewright.Tests.Support;

/// <summary>The files of a folder, under names that do not tell where the checkout stands.</summary>
internal sealed class FolderFiles(string folder) : PlanFiles
{
    public override SourceText? Read(string path)
    {
        var file = Path.Combine(folder, path);
        return File.Exists(file) ? new SourceText(path, File.ReadAllText(file)) : null;
    }
}
