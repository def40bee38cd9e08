using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>One line of the answer to many questions: the result of one of them, or the problem that it has.</summary>
/// <remarks>
/// Describes the contract. What is sent is put together by <see cref="NdjsonAnswers"/>, so that a result has the bytes that it has alone.
/// </remarks>
public sealed class BatchLine<TAnswer>
    where TAnswer : class
{
    /// <summary>
    /// The line of the question, counted from 1; blank lines count. In a table the row with which the question begins, the header being row
    /// 1.
    /// </summary>
    public required long Line { get; init; }

    /// <summary>What the table calls the test; absent when no table was sent.</summary>
    public string? Test { get; init; }

    /// <summary>
    /// What the table says in the columns <c>note</c>, <c>meter</c> and any whose name begins with <c>x-</c>; absent when it says nothing
    /// there or no table was sent.
    /// </summary>
    public IReadOnlyList<GivenCell>? Given { get; init; }

    /// <summary>What the question would be answered alone; absent when there is a problem.</summary>
    public TAnswer? Result { get; init; }

    /// <summary>What the question would be refused with alone; absent when there is a result.</summary>
    public Problem? Problem { get; init; }
}
