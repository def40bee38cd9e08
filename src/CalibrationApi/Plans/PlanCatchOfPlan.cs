using System.Text.Json;
using CalibrationApi.CatchPlans;
using CalibrationApi.CatchTests;
using CalibrationApi.Containers;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Http;
using CalibrationApi.Machines;
using CalibrationApi.Quantities;
using CalibrationApi.Records;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Adoptions;
using CalibrationApi.Storage.CatchTests;
using CalibrationApi.Storage.History;
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
    /// <remarks>Machine, products, lots, scale and container come from their records, the mass per revolution from the value in force, or from the plan's start value where none is. Computed anew with each call; nothing is stored.</remarks>
    /// <param name="id">Id of the plan.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the plan.</param>
    /// <response code="200">The catch plan.</response>
    public static Results<JsonAnswer<CatchPlanAnswer>, ProblemResult> Handle(
        string id, CalibrationDatabase database, Workspace workspace, IValidator<CatchPlanRequest> questions, [FromQuery] string? units = null)
    {
        using var connection = database.Open();
        if (new DescribedRecordStore(RecordKind.Plans).Find(connection, workspace, id) is not { } record)
            return Pages.NotFound();
        var plan = (PlanRequest)JsonSerializer.Deserialize(record.Body, JsonSettings.Contract.GetTypeInfo(typeof(PlanRequest)))!;
        var (question, errors) = Resolve(connection, workspace, plan);
        if (question is null)
            return ProblemResult.Invalid(errors);
        if (questions.Validate(question) is { IsValid: false } broken)
            return ProblemResult.Invalid(RequestFilter.Errors(broken));
        var answerUnits = CatchPlanMapping.UnitsFor(question, units);
        var outcome = CatchPlanEvaluation.Evaluate(CatchPlanMapping.ToEngine(question));
        return outcome.IsAnswered
            ? JsonAnswer.Of(CatchPlanMapping.ToAnswer(outcome.Result, answerUnits))
            : ProblemResult.Refused(outcome.Refusals, answerUnits.Display);
    }

    private static (CatchPlanRequest? Question, IReadOnlyList<ProblemError> Errors) Resolve(SqliteConnection connection, Workspace workspace, PlanRequest plan)
    {
        var records = new ReferredRecords(connection, workspace);
        var machine = records.Machine(plan.Machine!, nameof(plan.Machine));
        var scale = records.Scale(plan.Scale!, nameof(plan.Scale));
        var container = plan.Container is { } containerId ? records.Find<ContainerRequest>(RecordKind.Containers, containerId, nameof(plan.Container)) : null;
        var meters = new List<MeterOfPlan>();
        for (var i = 0; i < plan.Meters!.Count && machine is not null; i++)
        {
            if (Meter(connection, workspace, records, plan, machine, i) is { } meter)
                meters.Add(meter);
        }

        if (records.Errors.Count > 0)
            return (null, records.Errors);
        return (new CatchPlanRequest
        {
            GroundSpeed = plan.GroundSpeed,
            WorkingSpeeds = plan.WorkingSpeeds,
            Drive = machine!.Drive,
            WantedPrecision = plan.WantedPrecision,
            LongestRun = plan.LongestRun,
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
            DisturbedPoints = machine.RestorePoints,
        }, []);
    }

    private static MeterOfPlan? Meter(SqliteConnection connection, Workspace workspace, ReferredRecords records, PlanRequest plan, MachineRequest machine, int i)
    {
        var planned = plan.Meters![i]!;
        var path = $"Meters[{i}]";
        var product = records.Product(planned.Product!, $"{path}.Product");
        var lot = planned.Lot is { } lotId ? records.Lot(lotId, planned.Product!, $"{path}.Lot") : null;
        var meter = records.Meter(machine, planned.Meter!, $"{path}.Meter");
        var element = meter is null ? null : records.Element(meter, planned.Element!, $"{path}.Element");
        if (product is null || meter is null || element is null)
            return null;
        var series = new Series(plan.Machine!, planned.Meter!, planned.Element!, planned.Setting ?? "", planned.Product!);
        var adoption = AdoptionStore.InForce(connection, workspace, series, EnteredInstant.Now);
        if (adoption is null && planned.StartValue is null)
        {
            records.Errors.Add(new ProblemError
            {
                Pointer = RequestFilter.Pointer($"{path}.StartValue"),
                Code = ErrorCode.ValueMissing,
                Detail = "No value is in force for this meter, element, setting and product, and the plan has no start value. Adopt a value, or add a startValue to the plan.",
            });
            return null;
        }

        return new MeterOfPlan
        {
            Meter = planned.Meter,
            Product = product.Name,
            Material = product.Material,
            CoveredWidth = meter.CoveredWidth,
            TargetRate = planned.TargetRate,
            BulkDensity = lot?.BulkDensity ?? product.BulkDensity,
            ValueInForce = adoption is null ? null : InForce(connection, workspace, adoption),
            StartValue = adoption is null ? planned.StartValue : null,
            SpeedLimits = element.SpeedLimits ?? meter.SpeedLimits,
            PocketsPerRevolution = element.PocketsPerRevolution,
        };
    }

    private static ReferenceOfTest InForce(SqliteConnection connection, Workspace workspace, AdoptionRecord adoption)
    {
        var unit = UnitTable.Find(adoption.EnteredUnit) is { Dimension: Dimension.MassPerRevolution } entered ? entered : UnitTable.Get("kg/rev");
        var basis = adoption.Test is { } test ? CatchTestStore.Find(connection, workspace, test) : null;
        return new ReferenceOfTest
        {
            Value = AnswerUnits.Shown(unit.FromCanonical(adoption.Value)),
            Unit = unit.Symbol,
            // A test that turned out wrong says nothing of how well the number is known.
            RelativeUncertainty = basis is null || SupersessionStore.Find(connection, workspace, RecordCatchTest.Kind, basis.Id) is not null ? null : AnswerUnits.Percent(basis.Random),
        };
    }
}
