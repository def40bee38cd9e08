using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage.OneWriter;

namespace CalibrationApi.Plumbing.Keeping;

/// <summary>What became of a storing request inside its transaction.</summary>
internal sealed record StoreOutcome
{
    /// <summary>The answer; null when refused.</summary>
    public StoredAnswer? Answer { get; private init; }

    /// <summary>Why nothing was stored; null when something was.</summary>
    public ProblemResult? Problem { get; private init; }

    /// <summary>The answer is that of an earlier, equal request.</summary>
    public bool IsReplay { get; private init; }

    public static StoreOutcome Stored(StoredAnswer answer) => new() { Answer = answer };

    public static StoreOutcome Replayed(StoredAnswer answer) => new() { Answer = answer, IsReplay = true };

    public static implicit operator StoreOutcome(ProblemResult problem) => new() { Problem = problem };
}
