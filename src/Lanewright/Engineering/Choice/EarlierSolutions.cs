using System.Collections.Concurrent;

namespace Lanewright.Engineering.Choice;

/// <summary>Ways to make links that were found for earlier states of a plan. What is asked holds everything the answer depends on
/// (<see cref="LinkQuestions"/>), so an answer never goes out of date; one that is not wanted for a while is dropped.</summary>
internal sealed class EarlierSolutions
{
    private LinkQuestions questions = new();
    private readonly Dictionary<FinderContext, Bank> banks = [];
    private long round;

    /// <summary>Begins with another state of the plan.</summary>
    /// <param name="most">Rounds after which an answer that nobody wanted again is dropped.</param>
    /// <param name="mostKnown">Values of questions known at most.</param>
    public void NextRound(long most, int mostKnown)
    {
        round++;
        foreach (var (context, bank) in banks)
        {
            bank.Forget(round - most);
            if (bank.IsEmpty) banks.Remove(context);
        }
        if (questions.Count <= mostKnown) return;
        // A day of edits to a catalogue leaves many values that nothing asks about any more; beginning anew costs one slow round.
        questions = new LinkQuestions();
        banks.Clear();
    }

    /// <summary>Answers to questions under limits, a catalogue and a policy.</summary>
    public Bank Under(FinderContext context)
    {
        var same = questions.Of(context);
        return banks.TryGetValue(same, out var bank) ? bank.At(round) : banks[same] = new Bank(same, questions).At(round);
    }

    /// <summary>Answers under one catalogue and policy.</summary>
    internal sealed class Bank(FinderContext context, LinkQuestions questions)
    {
        private readonly SolutionFinder finder = new(context);
        private readonly Ranking ranking = new(context.Policy);
        private readonly ConcurrentDictionary<LinkClass, Answer> answers = [];
        private long round;

        public bool IsEmpty => answers.IsEmpty;

        public Bank At(long now)
        {
            round = now;
            return this;
        }

        /// <summary>The question a class asks.</summary>
        public LinkClass QuestionOf(LinkClass link) => questions.Of(link);

        /// <summary>Every way to make links that ask a question; may be asked from several threads.</summary>
        public FoundSolutions All(LinkClass question)
        {
            if (!answers.TryGetValue(question, out var answer))
                answer = answers.GetOrAdd(question, new Answer(new FoundSolutions(finder.All(question), ranking)));
            answer.LastWanted = round;
            return answer.Solutions;
        }

        public void Forget(long before)
        {
            foreach (var (question, answer) in answers)
                if (answer.LastWanted < before) answers.TryRemove(question, out _);
        }
    }

    private sealed class Answer(FoundSolutions solutions)
    {
        public FoundSolutions Solutions { get; } = solutions;

        public long LastWanted { get; set; }
    }
}
