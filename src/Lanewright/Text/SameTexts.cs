namespace Lanewright.Text;

/// <summary>Gives the same text again while a file stays the same, so that what was made of it can be known by it.</summary>
internal sealed class SameTexts
{
    private readonly Dictionary<string, SourceText> known = new(StringComparer.Ordinal);

    /// <summary>A door to the same files.</summary>
    public PlanFiles Over(PlanFiles files) => new Door(files, known);

    private sealed class Door(PlanFiles files, Dictionary<string, SourceText> known) : PlanFiles
    {
        public override SourceText? Read(string path)
        {
            if (files.Read(path) is not { } read) return null;
            var isSame = known.TryGetValue(path, out var before) && before.Path == read.Path && before.Content == read.Content;
            return isSame && before is not null ? before : known[path] = read;
        }

        public override string Problem(string path) => files.Problem(path);

        public override string Beside(string path, string mentioned) => files.Beside(path, mentioned);
    }
}
