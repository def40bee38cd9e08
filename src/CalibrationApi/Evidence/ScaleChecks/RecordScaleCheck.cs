using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Evidence.Superseding;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Storing;
using CalibrationApi.Records.Referring;
using CalibrationApi.Records.Scales;
using CalibrationApi.Storage;
using CalibrationApi.Storage.History;
using CalibrationApi.Storage.ScaleChecks;
using CalibrationApi.Storage.Writing;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Evidence.ScaleChecks;

/// <summary>Keeps a check of a scale, evaluated.</summary>
internal static class RecordScaleCheck
{
    public const string Kind = "scale-check";

    /// <summary>Records a check of a scale against known masses.</summary>
    /// <remarks>
    /// The span error found corrects later catch tests on that scale, and its uncertainty takes the place of the scale's limit.
    /// After a failed check, tests since the last good one say so when they are read. Send an Idempotency-Key, or your own id,
    /// to be able to repeat the request safely.
    /// </remarks>
    /// <param name="body">The readings of known masses.</param>
    /// <response code="200">The record that this id already had, from an equal request.</response>
    /// <response code="201">The stored check.</response>
    public static async Task<IResult> HandleAsync(
        JsonBody<ScaleCheckRequest> body,
        HttpContext context,
        CalibrationDatabase database,
        Workspace workspace,
        TimeProvider clock
    )
    {
        var request = body.Value;
        var storing = new StoringRequest(context);
        using var reading = database.Open();
        if (storing.Earlier(reading, body.Fingerprint, () => Earlier(reading, workspace, request.Id, body.Fingerprint)) is { } earlier)
            return earlier;
        var records = new ReferredRecords(reading, workspace);
        if (records.Scale(request.Scale!, nameof(request.Scale)) is not { } scale || records.Errors.Count > 0)
            return ProblemResult.Invalid(records.Errors);

        var result = ScaleCheckEvaluation.Evaluate(
            new(
                Scale(scale),
                [
                    .. request.Readings!.Select(one => new KnownMassReading(
                        one!.Known!.Read(),
                        one.Indicated!.Read(),
                        MassQuantity.Read(one.KnownUncertainty) ?? new Mass(0)
                    )),
                ]
            )
        );
        if (!result.IsKnowledge)
            return ProblemResult.Invalid([
                new ProblemError
                {
                    Pointer = "#/readings",
                    Code = ErrorCode.NumberOutOfRange,
                    Detail =
                        "These readings leave the error of the scale uncertain by more than 20 %. Weigh heavier masses, or masses that are known better.",
                },
            ]);
        var units = AnswerUnits.For(null, Quantity.UnitOf(request.Readings![0]!.Known));
        var record = new ScaleCheckRecord
        {
            Id = request.Id ?? RecordId.New(clock),
            Scale = request.Scale!,
            Error = result.Error,
            Uncertainty = result.StandardUncertainty,
            Passed = result.Passed,
            OccurredAt = EnteredInstant.Read(request.OccurredAt!),
            ReceivedAt = clock.GetUtcNow(),
            Body = body.Entered,
            Answer = Outcome(result, units).ToJsonString(JsonSettings.Writing),
            Fingerprint = body.Fingerprint,
        };
        return await storing.RunAsync(body.Fingerprint, connection => Store(connection, workspace, record, request));
    }

    /// <summary>Reads a check of a scale.</summary>
    /// <remarks>As entered and as evaluated then.</remarks>
    /// <param name="id">Id of the check.</param>
    /// <param name="units">Units of the answer; as-asked keeps what was entered.</param>
    /// <response code="200">The check.</response>
    public static IResult Get(string id, CalibrationDatabase database, Workspace workspace, [FromQuery] string? units = null)
    {
        using var connection = database.Open();
        return ScaleCheckStore.Find(connection, workspace, id) is { } check
            ? new RecordResult(Body(connection, workspace, check, units))
            : Pages.NotFound();
    }

    private static StoreOutcome? Earlier(SqliteConnection connection, Workspace workspace, string? id, string fingerprint)
    {
        if (id is null || ScaleCheckStore.Find(connection, workspace, id) is not { } earlier)
            return null;
        return earlier.Fingerprint == fingerprint
            ? StoreOutcome.Replayed(Answer(connection, workspace, earlier, StatusCodes.Status200OK))
            : Correction.IdTaken();
    }

    private static StoreOutcome Store(SqliteConnection connection, Workspace workspace, ScaleCheckRecord record, ScaleCheckRequest request)
    {
        if (Earlier(connection, workspace, record.Id, record.Fingerprint) is { } earlier)
            return earlier;
        if (
            request.Supersedes is { } supersedes
            && Correction.Supersede(connection, workspace, Kind, supersedes, record.Id, record.ReceivedAt, id =>
                ScaleCheckStore.Find(connection, workspace, id) is not null
            )
                is { } problem
        )
            return problem;
        ScaleCheckStore.Insert(connection, workspace, record);
        HistoryStore.Append(
            connection,
            workspace,
            new HistoryEntry
            {
                Kind = Kind,
                Record = record.Id,
                Scale = record.Scale,
                Verdict = record.Passed ? "passed" : "failed",
                Value = record.Error,
                RecordedBy = request.RecordedBy,
                OccurredAt = record.OccurredAt,
                ReceivedAt = record.ReceivedAt,
                Supersedes = request.Supersedes?.Record,
                Reason = request.Supersedes?.Reason,
            }
        );
        return StoreOutcome.Stored(Answer(connection, workspace, record, StatusCodes.Status201Created));
    }

    private static StoredAnswer Answer(SqliteConnection connection, Workspace workspace, ScaleCheckRecord check, int status)
    {
        var body = Body(connection, workspace, check, null);
        return new StoredAnswer(status, $"/v1/scale-checks/{check.Id}", RecordResult.Tag(body), body);
    }

    private static Scale Scale(ScaleRequest scale) =>
        ScaleMapping.Read(
            new ScaleOfTest
            {
                Division = scale.Division,
                AccuracyClass = scale.AccuracyClass,
                VerificationInterval = scale.VerificationInterval,
                StatedAccuracy = scale.StatedAccuracy,
                Capacity = scale.Capacity,
            }
        );

    private static JsonObject Outcome(ScaleCheckResult result, AnswerUnits units)
    {
        return new JsonObject
        {
            ["headline"] = units.Display.Write(result.Headline),
            ["passed"] = result.Passed,
            ["error"] = Node(AnswerUnits.Percent(result.Error)),
            ["standardUncertainty"] = Node(AnswerUnits.Percent(result.StandardUncertainty)),
            ["largestDeviation"] = Node(units.Mass(result.LargestDeviation)),
            ["limit"] = Node(units.Mass(result.Limit)),
            ["limitOrigin"] = result.LimitOrigin,
        };
    }

    private static JsonObject Node(Quantity quantity) => new JsonObject { ["value"] = quantity.Value, ["unit"] = quantity.Unit };

    private static byte[] Body(SqliteConnection connection, Workspace workspace, ScaleCheckRecord check, string? units)
    {
        var body = new JsonObject
        {
            ["id"] = check.Id,
            ["occurredAt"] = EnteredInstant.Write(check.OccurredAt),
            ["receivedAt"] = EnteredInstant.Write(check.ReceivedAt),
        };
        foreach (var (name, value) in JsonNode.Parse(check.Answer)!.AsObject())
            body[name] = value?.DeepClone();
        if (QuantityConversion.For(units) is { } display)
            QuantityConversion.Apply(body, display);
        body["entered"] = EnteredBody.Node(check.Body);
        if (SupersessionStore.Find(connection, workspace, Kind, check.Id) is { } superseded)
            body["supersededBy"] = new JsonObject { ["record"] = superseded.Replacement, ["reason"] = superseded.Reason };
        return Encoding.UTF8.GetBytes(body.ToJsonString(JsonSettings.Writing));
    }
}
