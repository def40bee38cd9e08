using CalibrationApi.Engine.FieldSetUps;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Observability;
using CalibrationApi.Records.Referring;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Described;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Records.Plans;

/// <summary>Works out rates and set-up of a stored plan with the records and the values in force of this moment.</summary>
internal static class SetUpOfPlan
{
    /// <summary>What its evaluations are counted under.</summary>
    public const string Kind = "plan-set-up";

    /// <summary>Computes rates and set-up of a stored plan.</summary>
    /// <remarks>
    /// One view of the field before the first catch: rates from the stand, the lot and the nutrients wanted; whether each element
    /// reaches its rate at the planned ground speeds; area per hour; where the fan may stand; what is placed with the seed against
    /// published limits; and what
    /// a new lot means for the value in force. What cannot be computed yet is listed under missing, with what to add; the rest is
    /// answered all the same. Computed anew with each call; nothing is stored.
    /// </remarks>
    /// <param name="id">Id of the plan.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the plan and its records.</param>
    /// <response code="200">Rates and set-up, and what is still missing.</response>
    public static Results<JsonAnswer<PlanSetUpAnswer>, ProblemResult> Handle(
        string id,
        CalibrationDatabase database,
        Workspace workspace,
        [FromQuery] string? units = null
    )
    {
        var field = database.Read(connection => Read(id, new ReferredRecords(new(connection, workspace))));
        if (field is null)
            return Pages.NotFound();
        var result = FieldSetUpEvaluation.Evaluate(FieldSetUpMapping.ToEngine(field));
        var answer = FieldSetUpMapping.ToAnswer(result, field, new FieldSetUpUnits(field, units) { Found = result });
        Evaluations.Count(Kind, answer.Verdict);
        return JsonAnswer.Of(answer);
    }

    private static PlannedField? Read(string id, ReferredRecords records) =>
        records.Known.Find<PlanRequest>(RecordKind.Plans, id) is { } plan ? PlannedField.Read(plan, records, ElementsRead.All) : null;
}
