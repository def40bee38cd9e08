using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage.Described;

namespace CalibrationApi.Plumbing.Lists;

/// <summary>Answers that every kind of record gives alike.</summary>
internal static class Pages
{
    public static ProblemResult NotFound() =>
        ProblemResult.Of(
            StatusCodes.Status404NotFound,
            ErrorCodes.NotFound,
            "There is no record with this id. Check it, or look in the list."
        );

    /// <param name="parameter">The parameter that it came in.</param>
    public static ProblemResult WrongCursor(string parameter = PageResult.CursorParameter) =>
        ProblemResult.Unreadable(
            new ProblemError
            {
                Parameter = parameter,
                Code = ErrorCodes.CursorInvalid,
                Detail = "This cursor is not one of this list with these filters. Start without a cursor and follow the next links.",
            }
        );

    public static ProblemError UnknownId(string member, RecordKind kind) =>
        new()
        {
            Pointer = RequestFilter.Pointer(member),
            Code = ErrorCodes.IdUnknown,
            Detail =
                $"There is no record with this id among the {kind.ToString().ToLowerInvariant()}. Check the id, or create that record first.",
        };
}
