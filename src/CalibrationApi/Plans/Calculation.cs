using CalibrationApi.Http;
using FluentValidation;
using Microsoft.AspNetCore.Http.HttpResults;

namespace CalibrationApi.Plans;

/// <summary>Asks a calculation what a caller could ask it: its rules come first, then the engine.</summary>
internal static class Calculation
{
    /// <summary>The answer, or why there is none. Places of errors are those of the question, which nobody sent.</summary>
    public static (TAnswer? Answer, IReadOnlyList<ProblemError> Errors) Ask<TRequest, TAnswer>(
        TRequest question, RequestValidator<TRequest> rules, Func<TRequest, string?, Results<JsonAnswer<TAnswer>, ProblemResult>> evaluate, string? units)
        where TRequest : class
        where TAnswer : class
    {
        if (((IValidator<TRequest>)rules).Validate(question) is { IsValid: false } broken)
            return (null, RequestFilter.Errors(broken));
        return evaluate(question, units).Result switch
        {
            JsonAnswer<TAnswer> answered => (answered.Value, []),
            ProblemResult refused => (null, refused.Errors),
            var other => throw new InvalidOperationException($"A calculation answered with {other}."),
        };
    }
}
