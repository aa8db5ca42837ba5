using Lanewright.Rules;

namespace Lanewright.Workbench.Desk;

/// <summary>The plan on the desk: its texts on disk and as typed, the newest result, and who waits for a newer one. The files on disk are
/// the truth; nothing here overwrites what somebody else wrote.</summary>
internal sealed class PlanDesk : IAsyncDisposable
{
    /// <summary>The place that judging itself is known by among long work.</summary>
    public const string JudgingPlace = "judging";

    /// <summary>Judging that takes longer is told of, and gives way to a newer text.</summary>
    public static readonly TimeSpan SaysItJudgesAfter = TimeSpan.FromSeconds(1);

    private static readonly TimeSpan LookEvery = TimeSpan.FromMilliseconds(300);

    private readonly Lock gate = new();

    /// <summary>Held around what is typed on its way to disk; the gate may be taken inside it, never the other way round.</summary>
    private readonly Lock disk = new();
    private readonly PlanFolder folder;
    private readonly Keepsakes keepsakes;
    private readonly Edits edits;
    private readonly Dictionary<string, OpenFile> open = new(StringComparer.Ordinal);
    private readonly CancellationTokenSource closing = new();
    private readonly Bell bell = new();
    private readonly Task judging;
    private readonly Task watching;
    private readonly Practice? practice;
    private readonly Pulse pulse = new();
    private int isClosed;
    private readonly EarlierWork earlier = new();
    private (JudgedPlan Judged, Judging By)? saved;
    private Judging newest = Begun();
    private Judging? running;

    /// <summary>Opens a plan.</summary>
    /// <param name="path">Its first file on disk.</param>
    /// <param name="practises">Whether it practises while nobody wants anything, so that the first edits are quick.</param>
    public PlanDesk(string path, bool practises = false)
    {
        practice = practises ? new Practice() : null;
        folder = new PlanFolder(Path.GetDirectoryName(Path.GetFullPath(path)) ?? ".");
        keepsakes = new Keepsakes(folder);
        edits = new Edits(folder, keepsakes);
        First = Path.GetFileName(path);
        if (folder.Read(First, out var problem) is null) throw new WorkbenchFault($"the plan '{path}' cannot be read: {problem}");
        judging = Task.Run(Judge);
        watching = Task.Run(Watch);
    }

    /// <summary>Name of the plan's first file.</summary>
    public string First { get; }

    /// <summary>The newest result; null until the first is there.</summary>
    public Snapshot? Current { get; private set; }

    /// <summary>What goes on that somebody may be waiting for.</summary>
    public LongWork Works { get; } = new(TimeProvider.System);

    /// <summary>The judging of a text that goes on just now; null when none does.</summary>
    public Judging? Running => running;

    /// <summary>What is worked out from the newest result just now, in words.</summary>
    public string Step => newest.Step;

    /// <summary>A person does not want to wait for work that goes on. Whatever else is being worked out from the same result begins
    /// again when it is next looked at.</summary>
    public void BreakOff(string place)
    {
        if (place != JudgingPlace && Works.AgeOf(place) is null) return;
        Works.BreakOff(place);
        lock (gate)
        {
            if (place == JudgingPlace)
            {
                running?.BreakOff();
                return;
            }
            newest.BreakOff();
            saved?.By.BreakOff();
            saved = null;
        }
        bell.Ring();
    }

    /// <summary>A person wants broken off work after all.</summary>
    public void Resume(string place)
    {
        Works.Resume(place);
        if (place == JudgingPlace) bell.Ring();
        Tick();
    }

    /// <summary>Counts everything that may change a page.</summary>
    public long Ticks => pulse.Ticks;

    /// <summary>Waits until something may have changed a page, or until a time is over.</summary>
    public Task<long> NextTick(long seen, TimeSpan most, CancellationToken gone) =>
        closing.IsCancellationRequested ? Task.FromResult(Ticks) : pulse.Next(seen, most, gone);

    /// <summary>Says that a page may have changed.</summary>
    public void Tick() => pulse.Tick();

    /// <summary>Claims the plan's folder for this desk.</summary>
    /// <exception cref="WorkbenchFault">Another workbench has it.</exception>
    public FolderClaim Claim() => FolderClaim.On(folder);

    /// <summary>A file of the plan; null for any other.</summary>
    public FileState? StateOf(string name)
    {
        lock (gate) return open.TryGetValue(name, out var file) ? FileState.Of(file) : null;
    }

    /// <summary>The files of the plan, in the order they are read.</summary>
    public IReadOnlyList<FileState> Files()
    {
        lock (gate) return [.. (Current?.Files ?? []).Where(open.ContainsKey).Select(n => FileState.Of(open[n]))];
    }

    /// <summary>Takes a text that was typed over a version of the file.</summary>
    public EditAnswer? Type(string name, long version, string text) => Change(name, file => edits.Type(file, version, text));

    /// <summary>Puts a text aside that a person gave up for another.</summary>
    public EditAnswer? PutAside(string name, string text) => Change(name, file => edits.PutAside(file, text));

    /// <summary>Puts a text in the place of the other that it could not be put together with; the other is put aside.</summary>
    public EditAnswer? Replace(string name, long version, string text) => Change(name, file => edits.Replace(file, version, text));

    /// <summary>Writes what is typed to disk, unless the file was changed outside meanwhile.</summary>
    public EditAnswer? Save(string name, long version) => Change(name, file => edits.Save(file, version));

    /// <summary>Gives up what is typed; the text is put aside.</summary>
    public EditAnswer? Discard(string name, long version) => Change(name, file => edits.Discard(file, version));

    /// <summary>A person has seen that the file was changed outside and wants what is typed: the next save may write it.</summary>
    public EditAnswer? KeepTyped(string name, long version) => Change(name, file => Edits.KeepTyped(file, version));

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (Interlocked.Exchange(ref isClosed, 1) == 1) return;
        await closing.CancelAsync().ConfigureAwait(false);
        lock (gate)
        {
            running?.BreakOff();
            newest.BreakOff();
            saved?.By.BreakOff();
        }
        bell.Close();
        practice?.BreakOff();
        Tick();
        // A request that is still under way may yet ring the bell, so that only what nobody else holds is disposed of.
        await Task.WhenAll(judging, watching).ConfigureAwait(false);
    }

    private static Judging Begun() => new(TimeProvider.System, new CancellationTokenSource());

    private EditAnswer? Change(string name, Func<OpenFile, EditAnswer> change)
    {
        EditAnswer answer;
        lock (gate)
        {
            if (!open.TryGetValue(name, out var file)) return null;
            answer = change(file);
            // A text that changed is judged whatever was broken off before.
            Works.Resume(JudgingPlace);
            if (running is { } slow && slow.Age > SaysItJudgesAfter) slow.BreakOff();
        }
        // It is judged while it goes to disk, and answered when it is there.
        Want();
        return KeepOnDisk(name, answer);
    }

    /// <summary>Brings to disk what is typed in a file, the newest there is: a slow disk holds up who types and nobody else. A text that
    /// cannot be brought there is taken all the same.</summary>
    private EditAnswer KeepOnDisk(string name, EditAnswer answer)
    {
        lock (disk)
        {
            (string, string)? typed;
            lock (gate) typed = open[name] is { Typed: { } text } file ? (file.Base, text) : null;
            try
            {
                keepsakes.Keep(name, typed);
                return answer;
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                return typed is not null
                    ? answer.NotKept(fault.Message)
                    : answer with { Words = $"{answer.Words} What was kept of it in .lanewright cannot be removed: {fault.Message}" };
            }
        }
    }

    private async Task Watch()
    {
        while (!closing.IsCancellationRequested)
        {
            await Task.Delay(LookEvery, closing.Token).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            var changed = false;
            try
            {
                lock (gate)
                {
                    foreach (var file in open.Values) changed |= edits.LookAt(file);
                    changed |= MissingTurnedUp();
                }
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                // A folder that cannot be looked into for a moment is looked into again.
            }
            if (changed && !closing.IsCancellationRequested) Want();
        }
    }

    /// <summary>Whether a file that the plan mentions and that could not be read is there now.</summary>
    private bool MissingTurnedUp() =>
        (Current?.Missing ?? []).Any(name => folder.StampOf(name) != default && folder.Read(name, out _) is not null);

    private async Task Judge()
    {
        while (true)
        {
            // Several changes that waited are judged together.
            if (!await IsWanted().ConfigureAwait(false)) continue;
            if (bell.IsClosed) return;
            JudgeOnce();
            Tick();
        }
    }

    /// <summary>Edits practised since the start.</summary>
    public int RoundsPractised => practice?.Rounds ?? 0;

    /// <summary>Waits until something is to be judged, and practises meanwhile; whether it is.</summary>
    private async Task<bool> IsWanted()
    {
        var rest = practice is { IsLeft: true } && Current is { Fault.Length: 0 } ? Practice.Pause : Timeout.InfiniteTimeSpan;
        if (await bell.Heard(rest).ConfigureAwait(false)) return true;
        Dictionary<string, string> texts;
        lock (gate) texts = open.Values.ToDictionary(f => f.Name, f => f.Text, StringComparer.Ordinal);
        practice?.Round(folder, texts, First, earlier, () => bell.IsRinging);
        return false;
    }

    /// <summary>Has the newest texts judged.</summary>
    private void Want()
    {
        bell.Ring();
        practice?.BreakOff();
    }

    private void JudgeOnce()
    {
        var judging = Begun();
        Dictionary<string, string> typed;
        bool isSaved;
        lock (gate)
        {
            if (Works.IsBrokenOff(JudgingPlace)) return;
            isSaved = open.Values.All(f => f.Typed is null);
            // A file that is gone, or cannot be read, counts with the text that was read last.
            typed = open.Values.Where(f => f.Typed is not null || f.IsGone || f.Unreadable.Length > 0)
                .ToDictionary(f => f.Name, f => f.Text, StringComparer.Ordinal);
            running = judging;
        }
        _ = TellWhenLong(judging);
        var files = new DeskFiles(folder, typed);
        try
        {
            Take(judging.Of(files, First, earlier), judging, files, isSaved);
        }
        catch (OperationCanceledException) when (judging.IsBrokenOff)
        {
            // For a newer text, which is waiting, or because nobody wants to wait for this one.
        }
        // Whatever text is typed, the desk stays open; what went wrong is said on every sheet.
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            lock (gate)
            {
                if (TakeIn(files)) bell.Ring();
                var known = Current ?? new Snapshot(new JudgedPlan { Findings = [] }, new(SavedPlan), files.Asked);
                Current = known.Failed(fault.Message);
            }
        }
        finally
        {
            lock (gate) running = null;
        }
    }

    private async Task TellWhenLong(Judging judging)
    {
        await Task.Delay(SaysItJudgesAfter, closing.Token).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        if (running == judging && !closing.IsCancellationRequested) Tick();
    }

    private void Take(JudgedPlan judged, Judging by, DeskFiles files, bool isSaved)
    {
        lock (gate)
        {
            if (TakeIn(files)) bell.Ring();
            // Sheets of the result before are no longer wanted, unless it is the one that others are held against.
            if (!ReferenceEquals(saved?.By, newest)) newest.BreakOff();
            newest = by;
            if (isSaved)
            {
                saved?.By.BreakOff();
                saved = (judged, by);
            }
            var before = saved?.Judged;
            Current = new Snapshot(judged, isSaved ? new(judged) : new(() => before ?? SavedPlan()), files.Asked, Current?.LastPlan);
        }
    }

    private JudgedPlan SavedPlan() => Compilation.Of(
        new DeskFiles(folder, new Dictionary<string, string>()), First, earlier: earlier);

    /// <summary>Opens files read for the first time; whether a text of an earlier session lies over one.</summary>
    private bool TakeIn(DeskFiles files)
    {
        var hasTyped = false;
        foreach (var (name, source) in files.Asked)
        {
            if (source is null || open.ContainsKey(name)) continue;
            // Its stamp is taken by the first look, which reads it again: a change between reading and now is not missed.
            var file = open[name] = new OpenFile(name, source.Content);
            if (keepsakes.TypedBefore(name) is not { } earlier) continue;
            file.Resume(earlier.Over, earlier.Typed);
            if (file.IsTorn && LineMerge.Of(earlier.Over, earlier.Typed, file.Disk) is { } merged) file.Rebase(merged);
            hasTyped |= file.Typed is not null;
        }
        return hasTyped;
    }
}
