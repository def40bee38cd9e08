using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.LikelyMistakes;

/// <summary>A mistake that would explain a test.</summary>
/// <param name="Code">Its code, which says the one thing to look at.</param>
/// <param name="Catch">The catch it happened in, as a position among all catches of the test; null for the whole test.</param>
/// <param name="Probability">Posterior probability, 0 to 1.</param>
/// <param name="BayesFactor">How many times better it explains the numbers than an ordinary change does; at most
/// <see cref="MostBayesFactor"/>.</param>
/// <param name="Detail">What was seen and why this mistake would explain it, in one sentence.</param>
public sealed record LikelyMistake(MistakeCode Code, int? Catch, double Probability, double BayesFactor, Sentence Detail)
{
    /// <summary>Beyond it a Bayes factor only says "certainly".</summary>
    public const double MostBayesFactor = 1e9;

    /// <summary>True when other mistakes that are shown explain the numbers almost as well.</summary>
    public bool CannotBeToldApart { get; init; }

    /// <summary>The mistake in a few words that can stand in a list.</summary>
    internal string InWords => Catch is { } one ? $"{Code.Word.Replace('-', ' ')} (catch {one + 1})" : Code.Word.Replace('-', ' ');
}

/// <summary>The mistakes that would explain a test, the most probable first.</summary>
public sealed record LikelyMistakesResult
{
    /// <summary>Nothing worth showing.</summary>
    public static LikelyMistakesResult None { get; } = new();

    /// <summary>Those with a posterior probability of at least <see cref="MistakeJudgement.ShownFrom"/>.</summary>
    public IReadOnlyList<LikelyMistake> Shown { get; init; } = [];

    /// <summary>
    /// From a large change on: what else in the whole test could explain it, the most probable first, so that each can be looked at.
    /// Under it: what fits the change exactly, from <see cref="MistakeJudgement.ListedFrom"/> on, where nothing is shown. All of them are
    /// below <see cref="MistakeJudgement.ShownFrom"/>; none stops a test.
    /// </summary>
    public IReadOnlyList<LikelyMistake> AlsoPossible { get; init; } = [];

    /// <summary>
    /// Probability that the test holds any mistake, shown or not; 0 where no single one could reach the limit for showing.
    /// </summary>
    public double AnyProbability { get; init; }

    /// <summary>
    /// The one mistake that is probable enough, well enough supported and told apart from the others to stop the test; null when there is
    /// none.
    /// </summary>
    public LikelyMistake? Named =>
        Shown
            is [
                {
                    CannotBeToldApart: false,
                    Probability: >= MistakeJudgement.NamedFrom,
                    BayesFactor: >= MistakeJudgement.ClearEvidence
                } first,
                ..,
            ]
            ? first
            : null;

    /// <summary>The mistakes that mass alone does not tell apart; empty or at least two.</summary>
    public IEnumerable<LikelyMistake> Group => Shown.Where(mistake => mistake.CannotBeToldApart);

    /// <summary>A mistake is likelier than an ordinary change.</summary>
    public bool LikelierThanChange => AnyProbability >= MistakeJudgement.NamedFrom;
}
