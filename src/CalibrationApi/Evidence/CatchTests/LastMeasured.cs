using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>What the last test of a series found that can be gone by.</summary>
/// <param name="Record">The test.</param>
/// <param name="Estimate">What the engine of today makes of it.</param>
internal sealed record LastMeasured(CatchTestRecord Record, MassPerRevolutionEstimate Estimate)
{
    private const int MostTests = 10;

    /// <summary>The newest test before an instant that stands and lacks nothing but precision; null when there is none.</summary>
    public static LastMeasured? Of(WorkspaceReader reader, Series series, DateTimeOffset before, string? except = null) =>
        reader
            .NewestTests(series, before, MostTests)
            .Where(record => record.Id != except)
            .Select(record =>
                CatchTestEvaluation.Evaluate(Resolved(record)).Result is { IsMeasure: true } result
                    ? new LastMeasured(record, result.Estimate)
                    : null
            )
            .FirstOrDefault(measured => measured is not null);

    /// <summary>The complete question of a stored test.</summary>
    public static CatchTestQuestion Resolved(CatchTestRecord record) =>
        CatchTestMapping.ToEngine(KeptJson.Read<CatchTestRequest>(record.Resolved));
}
