using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Records.Describing;

/// <summary>What a change by PUT has to fit before it is made.</summary>
internal static class Preconditions
{
    /// <summary>Why a change is not made to the representation with that tag; null when it may be.</summary>
    /// <param name="expected">The header If-Match.</param>
    /// <param name="tag">Entity tag of what is there.</param>
    public static ProblemResult? Refusal(string expected, string tag)
    {
        if (expected.Length == 0)
            return ProblemResult.Of(
                StatusCodes.Status428PreconditionRequired,
                ErrorCodes.PreconditionRequired,
                "A change names the revision that it is for. Send the ETag of your last GET as If-Match."
            );
        return expected == "*" || expected.Split(',', StringSplitOptions.TrimEntries).Contains(tag)
            ? null
            : ProblemResult.Of(
                StatusCodes.Status412PreconditionFailed,
                ErrorCodes.PreconditionFailed,
                "Somebody changed this record since you read it. Read it again, put your change into it, and send that with its new ETag."
            );
    }

    public static ProblemError OtherId() =>
        new()
        {
            Pointer = "#/id",
            Code = ErrorCodes.RecordsAtOdds,
            Detail = "The id in the body is not that of the address. Leave it out or make them equal.",
        };
}
