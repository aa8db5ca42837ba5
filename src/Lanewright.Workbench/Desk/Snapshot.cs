using System.Collections.Concurrent;
using System.Collections.Immutable;
using Lanewright.Deliverables.Drawings;
using Lanewright.Model;
using Lanewright.Rules;
using Lanewright.Text;
using Lanewright.Workbench.Sheets;

namespace Lanewright.Workbench.Desk;

/// <summary>One result and everything that is made of it when a page asks.</summary>
internal sealed class Snapshot
{
    /// <summary>Pages kept at most; a person looks at fewer.</summary>
    private const int MostPages = 200;

    private readonly ConcurrentDictionary<string, Lazy<Task<Page>>> pages = new(StringComparer.Ordinal);
    private readonly Lazy<JudgedPlan> saved;
    private readonly Lazy<LinkBook?> links;
    private readonly Lazy<Whereabouts?> places;
    private readonly Lazy<Snapshot> asSaved;
    private readonly Lazy<WhatIf> both;
    private readonly Lazy<Task<WhatIf>> compared;
    private readonly Lazy<ImmutableArray<LinkWay>> ways;

    /// <summary>Takes a result.</summary>
    /// <param name="judged">The result of the texts as they are typed.</param>
    /// <param name="saved">The result of the texts as they are on disk.</param>
    /// <param name="asked">The files that were asked for.</param>
    public Snapshot(JudgedPlan judged, Lazy<JudgedPlan> saved, IReadOnlyDictionary<string, SourceText?> asked)
    {
        Judged = judged;
        this.saved = saved;
        Files = [.. asked.Where(a => a.Value is not null).Select(a => a.Key)];
        Missing = [.. asked.Where(a => a.Value is null).Select(a => a.Key)];
        links = new(() => judged.Designed is { } designed ? new LinkBook(designed) : null);
        asSaved = new(() => new Snapshot(this.saved.Value, this.saved, asked));
        both = new(() => WhatIf.Of(this.saved.Value, judged));
        compared = new(() => Task.Run(() => both.Value));
        places = new(() => judged.Designed is { } designed ? new Whereabouts(designed) : null);
        ways = new(() => judged.Designed is { } designed ? LinkWays.Of(designed.Plan, designed.Design) : []);
    }

    /// <summary>The result.</summary>
    public JudgedPlan Judged { get; }

    /// <summary>The result of the texts on disk: the same where nothing is typed.</summary>
    public JudgedPlan Saved => saved.Value;

    /// <summary>The newest plan there was: a text that cannot be read just now makes nobody forget its names.</summary>
    public Plan? LastPlan { get; init; }

    /// <summary>The files that were read, in order.</summary>
    public ImmutableArray<string> Files { get; }

    /// <summary>The files that were asked for and not found.</summary>
    public ImmutableArray<string> Missing { get; }

    /// <summary>The result of the texts on disk with everything that pages make of it.</summary>
    public Snapshot AsSaved => asSaved.Value;

    /// <summary>The texts on disk held against the texts as typed.</summary>
    public WhatIf Both => both.Value;

    /// <summary>The same, once that is worked out.</summary>
    public Task<WhatIf> Compared => compared.Value;

    /// <summary>All links as rows; null without a plan.</summary>
    public LinkBook? Links => links.Value;

    /// <summary>Where its things are told of and drawn; null without a plan.</summary>
    public Whereabouts? Places => places.Value;

    /// <summary>The ways of making links.</summary>
    public ImmutableArray<LinkWay> Ways => ways.Value;

    /// <summary>What went wrong with a later text, which no result exists for; empty when nothing did.</summary>
    public string Fault { get; private init; } = "";

    /// <summary>This result, kept because the next text has none.</summary>
    public Snapshot Failed(string fault) => new(Judged, saved, Files.ToDictionary(f => f, f => (SourceText?)new SourceText(f, "")))
    {
        Fault = fault,
        LastPlan = LastPlan,
    };

    /// <summary>A page of this result, written once.</summary>
    public Task<Page> PageOf(string address, Func<Page> write)
    {
        if (pages.Count > MostPages) pages.Clear();
        return pages.GetOrAdd(address, _ => new(() => Task.Run(write))).Value;
    }
}
