using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Plumbing.Lists;

/// <summary>Words of the query that stand for one of a few things.</summary>
internal static class QueryWord
{
    private const string NewestFirst = "newest-first";

    /// <summary>The orders of a list of what happened; the first is the usual one.</summary>
    public static readonly string[] Orders = [NewestFirst, "oldest-first"];

    /// <summary>The word of a parameter; an error where it is none of those known.</summary>
    public static string? Read(string name, string? word, IReadOnlyList<string> words, List<ProblemError> errors)
    {
        if (word is not null && !words.Contains(word))
            errors.Add(
                new ProblemError
                {
                    Parameter = name,
                    Code = ErrorCodes.WordUnknown,
                    Detail = $"Use one of: {string.Join(", ", words)}.",
                }
            );
        return word;
    }

    /// <summary>Whether a list begins with the newest.</summary>
    public static bool IsNewestFirst(string? order, List<ProblemError> errors) =>
        Read("order", order, Orders, errors) is null or NewestFirst;
}
