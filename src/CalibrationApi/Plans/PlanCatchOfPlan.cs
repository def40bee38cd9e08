using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.CatchTests;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Http;
using CalibrationApi.Quantities;
using CalibrationApi.Records;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Records;
using CalibrationApi.Storing;
using FluentValidation;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Plans;

/// <summary>Plans the catch test of a stored plan with the records and the values in force of this moment.</summary>
internal static class PlanCatchOfPlan
{
    /// <summary>Computes the catch plan of a stored plan.</summary>
    /// <remarks>Machine, products, lots, scale and container come from their records, the mass per revolution from the value in force, from the plan's start value where none is, else from the volume of the element and the bulk density. Computed anew with each call; nothing is stored.</remarks>
    /// <param name="id">Id of the plan.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the plan.</param>
    /// <response code="200">The catch plan.</response>
    public static Results<JsonAnswer<CatchPlanAnswer>, ProblemResult> Handle(
        string id, CalibrationDatabase database, Workspace workspace, IValidator<CatchPlanRequest> questions, [FromQuery] string? units = null)
    {
        var predicted = new List<(PlannedMeter Meter, KnownValue Known)>();
        var (question, errors) = database.Read(connection => new RecordsReadOnce(connection, workspace).Find<PlanRequest>(RecordKind.Plans, id) is { } plan
            ? Resolve(connection, workspace, plan, predicted)
            : (null, null));
        if (errors is null)
            return Pages.NotFound();
        if (question is null)
            return ProblemResult.Invalid(errors);
        if (questions.Validate(question) is { IsValid: false } broken)
            return ProblemResult.Invalid(RequestFilter.Errors(broken));
        var answerUnits = CatchPlanCalculation.UnitsFor(question, units);
        var outcome = CatchPlanEvaluation.Evaluate(CatchPlanCalculation.ToEngine(question));
        return outcome.IsAnswered
            ? JsonAnswer.Of(CatchPlanCalculation.ToAnswer(outcome.Result, answerUnits, [.. predicted.Select(one => Predicted(one.Meter, one.Known, answerUnits))]))
            : ProblemResult.Refused(outcome.Refusals, answerUnits.Display);
    }

    private static (CatchPlanRequest? Question, IReadOnlyList<ProblemError>? Errors) Resolve(
        SqliteConnection connection, Workspace workspace, PlanRequest plan, List<(PlannedMeter Meter, KnownValue Known)> predicted)
    {
        var records = new ReferredRecords(connection, workspace);
        var scale = records.Scale(plan.Scale!, nameof(plan.Scale));
        var container = plan.Container is { } containerId ? records.Container(containerId, nameof(plan.Container)) : null;
        var field = PlannedField.Read(plan, records);
        var meters = new List<MeterOfPlan>();
        // A product that the nutrients do not need is not put down.
        foreach (var meter in field.Meters.Where(meter => !meter.IsOff))
        {
            if (meter.ValueOf(meter.Element, connection, workspace, plan.Machine!) is not { } known)
            {
                records.Errors.Add(meter.WithoutValue());
                continue;
            }

            meters.Add(Meter(meter, known));
            if (known.From == ValueOrigin.Displacement)
                predicted.Add((meter, known));
        }

        if (records.Errors.Count + field.RateErrors.Count > 0)
            return (null, [.. records.Errors, .. field.RateErrors]);
        return (new CatchPlanRequest
        {
            GroundSpeed = plan.GroundSpeed,
            WorkingSpeeds = plan.WorkingSpeeds,
            Drive = field.Machine!.Drive,
            WantedPrecision = plan.WantedPrecision,
            LongestRun = plan.LongestRun,
            ShortestRun = plan.ShortestRun,
            ContainersAtHand = plan.ContainersAtHand,
            LiftLimit = plan.LiftLimit,
            Scale = new ScaleOfTest
            {
                Division = scale!.Division,
                AccuracyClass = scale.AccuracyClass,
                VerificationInterval = scale.VerificationInterval,
                StatedAccuracy = scale.StatedAccuracy,
                Capacity = scale.Capacity,
            },
            Container = container is null ? null : new ContainerOfPlan { Volume = container.Volume, Tare = container.Tare, Fill = container.Fill },
            Meters = meters,
            DisturbedPoints = field.Machine.RestorePoints,
        }, []);
    }

    private static MeterOfPlan Meter(PlannedMeter meter, KnownValue known) => new()
    {
        Meter = meter.Planned.Meter,
        Product = meter.Product.Name,
        Material = meter.Product.Material,
        CoveredWidth = meter.Meter.CoveredWidth,
        TargetRate = meter.Rate,
        BulkDensity = meter.BulkDensity,
        FittedElement = meter.Element.DisplacementPerRevolution is { } displacement
            ? new FittedElement { Name = meter.Element.Name, Kind = meter.Element.Kind, DisplacementPerRevolution = displacement }
            : null,
        ValueInForce = known.From == ValueOrigin.ValueInForce ? known.Value : null,
        StartValue = known.From == ValueOrigin.ValueInForce ? null : known.Value,
        SpeedLimits = meter.Element.SpeedLimits ?? meter.Meter.SpeedLimits,
        PocketsPerRevolution = meter.Element.PocketsPerRevolution,
    };

    private static AssumptionAnswer Predicted(PlannedMeter meter, KnownValue known, AnswerUnits units) => new()
    {
        Name = "startValue",
        Value = units.Any(known.Value.Read()),
        Origin = "the volume of the element times the bulk density times a usual fill efficiency: nothing was measured yet",
        Meter = meter.Planned.Meter,
    };
}
