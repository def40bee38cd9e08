using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Contract;

namespace CalibrationApi.Reference.Codes;

/// <summary>Every code that answers carry.</summary>
public sealed class CodesAnswer
{
    /// <summary>The codes, by kind and then in the order of the alphabet.</summary>
    public required IReadOnlyList<CodeAnswer> Codes { get; init; }
}

/// <summary>One code, what it comes from and what to do.</summary>
public sealed class CodeAnswer
{
    /// <summary>The code as answers carry it. It never changes its meaning.</summary>
    public required string Code { get; init; }

    /// <summary>
    /// Where it comes: an <c>error</c> in a problem, because the request has to be put right; a <c>refusal</c> in a problem, because a
    /// well-formed question has no sound answer; a <c>finding</c> among the findings and reasons of an answer; a <c>caution</c> where work
    /// can hurt somebody; a <c>mistake</c> among the likely mistakes of a catch test.
    /// </summary>
    [KnownWords("error", "refusal", "finding", "caution", "mistake")]
    public required string Kind { get; init; }

    /// <summary>The HTTP statuses that it comes with; absent when it comes with an answer.</summary>
    public IReadOnlyList<int>? Statuses { get; init; }

    /// <summary>The severities that it comes with, as findings name them; absent when it is no finding.</summary>
    [KnownWords(typeof(Severity))]
    public IReadOnlyList<string>? Severities { get; init; }

    /// <summary>What it comes from, in a sentence.</summary>
    public required string Cause { get; init; }

    /// <summary>What to do, in short sentences.</summary>
    public required string Remedy { get; init; }
}
