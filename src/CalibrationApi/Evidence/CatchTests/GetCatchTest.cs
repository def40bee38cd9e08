using CalibrationApi.Plumbing.Access;
using CalibrationApi.Storage;
using Microsoft.AspNetCore.Mvc;

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
    public static IResult Handle(string id, CalibrationDatabase database, Workspace workspace, [FromQuery] string? units = null) =>
        CatchTestRecords.All.Get(id, database, workspace, units);
}
