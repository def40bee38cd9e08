using CalibrationApi.Testing;
using Xunit.Abstractions;

namespace CalibrationApi.Hostile.Tests;

/// <summary>A seeded part of the hostile run; DEVELOPERS.md has the command for all of it.</summary>
public sealed class HostileRunTests(ITestOutputHelper output)
{
    private const int Requests = 3000;
    private const int Seed = 20260501;
    private const long MostGrowth = 50 << 20;

    private static readonly int[] Expected = [200, 201, 400, 401, 403, 404, 405, 406, 412, 415, 422, 428];

    [Fact]
    public async Task Service_SentRequestsOfEveryKind_AnswersEachAsTheContractSaysAndStoresNoneThatItRefuses()
    {
        await using var run = await HostileRun.StartAsync(Seed);

        var report = await run.RunAsync(Requests);

        output.WriteLine(report.ToString());
        Assert.True(report.Faults.Count == 0, report.ToString());
        Assert.True(report.GrowthOverSecondHalf < MostGrowth, report.ToString());
        // A run that only meets closed doors, or only open ones, would test nothing.
        Assert.Equal(ContractDocument.Committed.Operations.Count, report.Operations.Count);
        Assert.All(report.Operations, operation => Assert.True(operation.Value is { Taken: > 0, Refused: > 0 }, $"{operation}"));
        Assert.Empty(Expected.Except(report.Statuses.Keys));
        Assert.True(report.Tricks.Count > 60);
    }
}
