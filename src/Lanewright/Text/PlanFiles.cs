namespace Lanewright.Text;

/// <summary>The one door to files. The library asks it for a text by name and never touches disk itself.</summary>
public abstract class PlanFiles
{
    /// <summary>The text of a file, or null when there is none or it cannot be read.</summary>
    public abstract SourceText? Read(string path);

    /// <summary>Why a file cannot be read, such as <c>it does not exist</c>; asked only of one that could not be.</summary>
    public virtual string Problem(string path) => "it does not exist";

    /// <summary>The name by which a file that another one mentions can be asked for: beside that one unless it is rooted.</summary>
    public virtual string Beside(string path, string mentioned)
    {
        if (mentioned.StartsWith('/')) return mentioned;
        var folder = path.LastIndexOf('/');
        return folder < 0 ? mentioned : path[..(folder + 1)] + mentioned;
    }
}
