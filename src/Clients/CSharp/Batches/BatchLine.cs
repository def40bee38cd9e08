namespace CalibrationApi.Client;

/// <summary>One question of a batch with its answer or its problem.</summary>
/// <typeparam name="TQuestion">What was asked.</typeparam>
/// <typeparam name="TAnswer">What is answered.</typeparam>
public sealed class BatchLine<TQuestion, TAnswer>
    where TAnswer : class
{
    internal BatchLine(long line, TQuestion question, TAnswer? answer, CalibrationException? problem)
    {
        Line = line;
        Question = question;
        Answer = answer;
        Problem = problem;
    }

    /// <summary>Its place among the questions; the first is 1.</summary>
    public long Line { get; }

    /// <summary>What was asked.</summary>
    public TQuestion Question { get; }

    /// <summary>The answer; null when the question was refused.</summary>
    public TAnswer? Answer { get; }

    /// <summary>Why the question was refused; null when it was answered.</summary>
    public CalibrationException? Problem { get; }

    /// <summary>The answer.</summary>
    /// <exception cref="CalibrationException">The question was refused.</exception>
    public TAnswer AnswerOrThrow() => Answer ?? throw Problem!;
}
