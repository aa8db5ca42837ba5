using System.Collections.Concurrent;

namespace Lanewright.Engineering.Load;

/// <summary>What was reckoned of networks in earlier states of a plan. What is asked holds everything the answer depends on
/// (<see cref="LoadQuestion"/>), so an answer never goes out of date; one that is not wanted for a while is dropped.</summary>
internal sealed class EarlierLoads
{
    private readonly ConcurrentDictionary<(string What, LoadQuestion Question), Answer> answers = [];
    private long round;

    /// <summary>Begins with another state of the plan.</summary>
    /// <param name="most">Rounds after which an answer that nobody wanted again is dropped.</param>
    public void NextRound(long most)
    {
        round++;
        foreach (var (key, answer) in answers)
            if (answer.LastWanted + most < round) answers.TryRemove(key, out _);
    }

    /// <summary>The answer to a question, now or before; may be asked from several threads.</summary>
    /// <param name="what">What is asked for.</param>
    /// <param name="question">What it depends on.</param>
    /// <param name="reckon">Works it out; what is broken off is not kept.</param>
    public T? Of<T>(string what, LoadQuestion question, Func<T?> reckon)
        where T : class
    {
        if (!answers.TryGetValue((what, question), out var answer))
            answer = answers.GetOrAdd((what, question), new Answer(reckon()));
        answer.LastWanted = round;
        return answer.Value as T;
    }

    private sealed class Answer(object? value)
    {
        public object? Value { get; } = value;

        public long LastWanted { get; set; }
    }
}
