using System.Collections.Concurrent;
using System.Collections.Immutable;
using Lanewright.Deliverables;
using Lanewright.Rules;

namespace Lanewright.Workbench.Sheets;

/// <summary>Every link as a row of words. What links of a class share is held once; rows are made when they are looked at, so a hundred
/// thousand links cost no more than those on the screen.</summary>
internal sealed class LinkBook
{
    private const int MostKept = 16;
    private const int LongestFilter = 200;

    private readonly DesignedPlan designed;
    private readonly PlaceLabels labels;
    private readonly Dictionary<(int Class, int Share), LinkKind> kinds;
    private readonly Lazy<string[]> devices;
    private readonly ConcurrentDictionary<(string, string), int[]> kept = new();

    /// <summary>Takes a plan.</summary>
    public LinkBook(DesignedPlan designed)
    {
        this.designed = designed;
        labels = new PlaceLabels(designed.Plan);
        kinds = LinkKind.All(designed);
        devices = new(() => [.. Enumerable.Range(0, designed.Plan.Devices.Count).Select(designed.Plan.Devices.Name)]);
    }

    /// <summary>Headings of the columns, with what each is sorted by; empty for a column that is not.</summary>
    public static ImmutableArray<(string Title, string Sort)> Columns { get; } =
    [
        ("link", "link"), ("class", "class"), ("set", ""), ("from", "from"), ("to", "to"), ("rate", ""), ("medium", ""),
        ("made with", ""), ("length", "length"), ("margin", "margin"), ("verdict", "verdict"),
    ];

    /// <summary>How many links there are.</summary>
    public int Count => designed.Plan.Links.Count;

    /// <summary>The kinds of links, each with how many there are.</summary>
    public IEnumerable<LinkKind> Kinds => kinds.Values;

    /// <summary>The kind of a link.</summary>
    public LinkKind KindOf(int link) => kinds[(designed.Design.ClassOf(link), designed.Design.ShareOf(link))];

    /// <summary>The words of a link.</summary>
    public string[] Row(int link)
    {
        var (links, kind) = (designed.Plan.Links, KindOf(link));
        return
        [
            Identifiers.Link(link), kind.Name, designed.Plan.Statements[links.Statement(link)].Name,
            End(links.FromDevice(link), links.FromPort(link)), End(links.ToDevice(link), links.ToPort(link)),
            kind.Rate, kind.Medium, kind.Made, kind.LengthWords, kind.MarginWords, kind.VerdictWord,
        ];
    }

    /// <summary>The links that a filter lets through, in an order.</summary>
    /// <param name="filter">Words that must all be found in a row; <c>margin&lt;1</c> and <c>margin &gt;= 1</c> compare.</param>
    /// <param name="sort">A column to sort by, with <c>-</c> before it for the other way round; empty for the order of links.</param>
    public int[] Select(string filter, string sort)
    {
        var key = (filter.Length > LongestFilter ? filter[..LongestFilter] : filter, sort);
        if (kept.TryGetValue(key, out var known)) return known;
        if (kept.Count >= MostKept) kept.Clear();
        return kept[key] = Sorted(Filtered(key.Item1), sort);
    }

    private string End(int device, Model.Links.PortPlace port) => $"{NameOf(device)}:{labels.Port(device, port)}";

    /// <summary>A few rows need a few names; only who looks for a word needs all.</summary>
    private string NameOf(int device) => devices.IsValueCreated ? devices.Value[device] : designed.Plan.Devices.Name(device);

    private int[] Filtered(string filter)
    {
        var words = MarginTest.WordsOf(filter);
        if (words.Length == 0) return [.. Enumerable.Range(0, Count)];
        var tests = words.Select(TestOf).ToArray();
        return [.. Enumerable.Range(0, Count).Where(link => tests.All(test => test(link)))];
    }

    /// <summary>A word is looked for once a kind and once a device, never once a link.</summary>
    private Func<int, bool> TestOf(string word)
    {
        if (MarginTest.Read(word) is { } margin)
        {
            var within = kinds.Values.Where(k => margin.Holds(k.Margin)).ToHashSet();
            return link => within.Contains(KindOf(link));
        }
        // A bound that cannot be read lets nothing through; whoever asked is told what is wrong with it.
        if (MarginTest.IsMeant(word)) return _ => false;
        bool Has(string text) => text.Contains(word, StringComparison.OrdinalIgnoreCase);
        var plan = designed.Plan;
        var alike = kinds.Values.Where(k => k.Words.Any(Has)).ToHashSet();
        var sets = plan.Statements.Select(s => Has(s.Name)).ToArray();
        var named = devices.Value.Select(Has).ToArray();
        var hasPort = word.Contains(':');
        var isNumber = word.StartsWith('L') || word.StartsWith('C');
        return link => alike.Contains(KindOf(link)) || sets[plan.Links.Statement(link)]
            || named[plan.Links.FromDevice(link)] || named[plan.Links.ToDevice(link)]
            || (isNumber && (Identifiers.Link(link) == word || Identifiers.Cable(designed.Design.CableOf(link)) == word))
            || (hasPort && (Has(End(plan.Links.FromDevice(link), plan.Links.FromPort(link)))
                || Has(End(plan.Links.ToDevice(link), plan.Links.ToPort(link)))));
    }

    private int[] Sorted(int[] links, string sort)
    {
        var isBackwards = sort.StartsWith('-');
        var plan = designed.Plan;
        IOrderedEnumerable<int>? sorted = sort.TrimStart('-') switch
        {
            "margin" => links.OrderBy(l => KindOf(l).Margin ?? double.MaxValue),
            "length" => links.OrderBy(l => KindOf(l).Metres),
            "class" => links.OrderBy(l => designed.Design.ClassOf(l)).ThenBy(l => designed.Design.ShareOf(l)),
            "verdict" => links.OrderByDescending(l => KindOf(l).Verdict),
            "from" => links.OrderBy(plan.Links.FromDevice),
            "to" => links.OrderBy(plan.Links.ToDevice),
            _ => null,
        };
        int[] all = sorted is null ? links : [.. sorted.ThenBy(l => l)];
        if (isBackwards) Array.Reverse(all);
        return all;
    }
}
