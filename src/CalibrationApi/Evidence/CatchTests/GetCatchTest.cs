using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Storing;
using CalibrationApi.Records.Machines;
using CalibrationApi.Storage;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.Writing;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>Reads a stored test; it is never recomputed on the way.</summary>
internal static class GetCatchTest
{
    /// <summary>Reads a stored catch test.</summary>
    /// <remarks>
    /// As entered, as asked and as answered then, with what came to light since. Quantities come in other units on request; sentences stay
    /// as written.
    /// </remarks>
    /// <param name="id">Id of the test.</param>
    /// <param name="units">Units of the answer; as-asked keeps those of the question.</param>
    /// <response code="200">The test.</response>
    public static IResult Handle(string id, CalibrationDatabase database, Workspace workspace, [FromQuery] string? units = null)
    {
        using var connection = database.Open();
        return CatchTestStore.Find(connection, workspace, id) is { } test
            ? new RecordResult(Body(connection, workspace, test, units))
            : Pages.NotFound();
    }

    public static StoredAnswer Stored(SqliteConnection connection, Workspace workspace, CatchTestRecord test)
    {
        var body = Body(connection, workspace, test, null);
        return new StoredAnswer(StatusCodes.Status200OK, $"/v1/catch-tests/{test.Id}", RecordResult.Tag(body), body);
    }

    private static byte[] Body(SqliteConnection connection, Workspace workspace, CatchTestRecord test, string? units) =>
        CatchTestRecordBody.Write(
            test,
            MachineTimeZone.Of(connection, workspace, test.Series.Machine),
            SupersessionStore.Find(connection, workspace, RecordCatchTest.Kind, test.Id),
            CatchTestRecordBody.SinceThen(connection, workspace, test),
            QuantityConversion.For(units)
        );
}
