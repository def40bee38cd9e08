using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Storage.History;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Evidence.Superseding;

/// <summary>What every kind of evidence shares: it is only added, and corrected by another record with a reason.</summary>
internal static class Correction
{
    public static ProblemResult IdTaken() =>
        ProblemResult.Invalid([
            new ProblemError
            {
                Pointer = "#/id",
                Code = ErrorCode.IdTaken,
                Detail =
                    "This id already belongs to a record that was created by another body. Use a new id; to correct that record, supersede it.",
            },
        ]);

    /// <summary>Says that a record takes the place of another; a problem when it cannot.</summary>
    public static ProblemResult? Supersede(
        SqliteConnection connection,
        Workspace workspace,
        string kind,
        Supersedes supersedes,
        string replacement,
        DateTimeOffset now,
        Func<string, bool> exists
    )
    {
        if (!exists(supersedes.Record!))
            return ProblemResult.Invalid([
                new ProblemError
                {
                    Pointer = "#/supersedes/record",
                    Code = ErrorCode.IdUnknown,
                    Detail = "There is no such record of this kind to supersede. Check the id.",
                },
            ]);
        return SupersessionStore.TryInsert(
            connection,
            workspace,
            kind,
            new Supersession(supersedes.Record!, replacement, supersedes.Reason!, now)
        )
            ? null
            : ProblemResult.Invalid([
                new ProblemError
                {
                    Pointer = "#/supersedes/record",
                    Code = ErrorCode.AlreadySuperseded,
                    Detail = "That record was already superseded. Supersede the record that took its place.",
                },
            ]);
    }
}
