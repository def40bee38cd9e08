using System.Text.Json.Nodes;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Keeping;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Records.Reading;
using CalibrationApi.Storage;
using Microsoft.AspNetCore.Http.HttpResults;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>Evaluates a stored question again and compares.</summary>
internal static class RecomputeCatchTest
{
    /// <summary>Evaluates a stored catch test again and says whether anything differs.</summary>
    /// <remarks>
    /// The stored question goes through the engine as it is now; every value is compared with the stored answer. Nothing is changed.
    /// </remarks>
    /// <param name="id">Id of the test.</param>
    /// <response code="200">Equal, or what differs.</response>
    public static Results<JsonAnswer<RecomputationAnswer>, ProblemResult> Handle(
        string id,
        CalibrationDatabase database,
        Workspace workspace
    )
    {
        if (database.Read(connection => new WorkspaceReader(connection, workspace).Test(id)) is not { } test)
            return Pages.NotFound();
        var question = KeptJson.Read<CatchTestRequest>(test.Resolved);
        var units = CatchTestMapping.UnitsFor(question, null).PointingInto(typeof(CatchTestRequest));
        var outcome = CatchTestEvaluation.Evaluate(CatchTestMapping.ToEngine(question));
        if (!outcome.IsAnswered)
            return ProblemResult.Refused(outcome.Refusals, units.Display);
        var answer = CatchTestMapping.ToAnswer(question, outcome.Result, units);
        var now = KeptJson.Node(answer);
        DifferenceAnswer[] differences = [.. Differences("#", JsonNode.Parse(test.Answer), now)];
        return JsonAnswer.Of(
            new RecomputationAnswer
            {
                Equal = differences.Length == 0,
                EngineVersionThen = test.EngineVersion,
                EngineVersionNow = EngineVersion.Current,
                Differences = differences,
            }
        );
    }

    private static IEnumerable<DifferenceAnswer> Differences(string pointer, JsonNode? stored, JsonNode? now)
    {
        if (stored is JsonObject then && now is JsonObject here)
            return then.Select(member => member.Key)
                .Union(here.Select(member => member.Key))
                .SelectMany(name => Differences($"{pointer}/{name}", then[name], here[name]));
        if (stored is JsonArray before && now is JsonArray after)
            return Enumerable
                .Range(0, Math.Max(before.Count, after.Count))
                .SelectMany(i => Differences($"{pointer}/{i}", before.ElementAtOrDefault(i), after.ElementAtOrDefault(i)));
        return JsonNode.DeepEquals(stored, now)
            ? []
            :
            [
                new DifferenceAnswer
                {
                    Pointer = pointer,
                    Stored = stored?.ToJsonString(JsonSettings.Writing),
                    Recomputed = now?.ToJsonString(JsonSettings.Writing),
                },
            ];
    }
}
