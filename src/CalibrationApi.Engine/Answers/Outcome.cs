using System.Diagnostics.CodeAnalysis;

namespace CalibrationApi.Engine.Answers;

/// <summary>Either a result or the refusals that explain why there is none.</summary>
public readonly struct Outcome<T>
    where T : class
{
    private readonly IReadOnlyList<Refusal>? refusals;

    private Outcome(T? result, IReadOnlyList<Refusal>? refusals)
    {
        Result = result;
        this.refusals = refusals;
    }

    /// <summary>The result; null when refused.</summary>
    public T? Result { get; }

    /// <summary>Every reason for refusing; empty when there is a result.</summary>
    public IReadOnlyList<Refusal> Refusals => refusals ?? [];

    /// <summary>True when the question was answered.</summary>
    [MemberNotNullWhen(true, nameof(Result))]
    public bool IsAnswered => Result is not null;

    /// <summary>An answer.</summary>
    public static implicit operator Outcome<T>(T result) => new(result, null);

    /// <summary>One refusal.</summary>
    public static implicit operator Outcome<T>(Refusal refusal) => new(null, [refusal]);

    /// <summary>Several refusals.</summary>
    public static implicit operator Outcome<T>(List<Refusal> refusals) => new(null, refusals);
}
