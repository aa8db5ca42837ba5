using Lanewright.Engineering.Load;
using Lanewright.Findings;

namespace Lanewright.Rules.Fabric;

/// <summary>A rule about links that look redundant and end on one thing.</summary>
internal abstract class SharedEndRule : Rule
{
    private readonly FailureKind shared;

    /// <summary>Takes its code, its name, what is shared and the weight of its findings.</summary>
    protected SharedEndRule(string code, string name, FailureKind shared, Severity severity)
        : base(code, name, severity)
    {
        this.shared = shared;
    }

    /// <inheritdoc/>
    public sealed override bool NeedsWholePlan => true;

    /// <inheritdoc/>
    public sealed override void Judge(Judgement judgement)
    {
        foreach (var network in judgement.Load.Networks)
        {
            var ends = SharedEnd.Of(network).Where(e => e.Kind == shared);
            foreach (var group in ends.GroupBy(e => judgement.Plan.Devices.Group(e.Device)))
            {
                var first = group.First();
                var who = FabricWords.WithMore(judgement.Plan.Devices.Name(first.Device), group.Count());
                judgement.Add(this, network.Statement(first.FirstLink).Span, Message(judgement, first, who), group.Key.Name, group.Count());
            }
        }
    }

    /// <summary>What is wrong and what to do.</summary>
    /// <param name="judgement">What is judged.</param>
    /// <param name="end">The first device with such links.</param>
    /// <param name="who">That device and how many more.</param>
    protected abstract string Message(Judgement judgement, SharedEnd end, string who);
}
