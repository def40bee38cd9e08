using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.FieldSetUps;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Containers;
using CalibrationApi.Records.Referring;
using CalibrationApi.Records.Scales;
using CalibrationApi.Storage;
using CalibrationApi.Storage.Described;
using FluentValidation;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;

namespace CalibrationApi.Records.Plans;

/// <summary>Plans the catch test of a stored plan with the records and the values in force of this moment.</summary>
internal static class PlanCatchOfPlan
{
    /// <summary>Computes the catch plan of a stored plan.</summary>
    /// <remarks>
    /// Machine, products, lots, scale and container come from their records, the mass per revolution from the value in force, from the
    /// plan's start value where none is, else from the volume of the element and the bulk density. Computed anew with each call; nothing is
    /// stored.
    /// </remarks>
    /// <param name="id">Id of the plan.</param>
    /// <param name="units">Units of the answer; as-asked takes those of the plan.</param>
    /// <response code="200">The catch plan.</response>
    public static Results<JsonAnswer<CatchPlanAnswer>, ProblemResult> Handle(
        string id,
        CalibrationDatabase database,
        Workspace workspace,
        IValidator<CatchPlanRequest> questions,
        [FromQuery] string? units = null
    )
    {
        var planned = database.Read(connection => Read(id, new ReferredRecords(new(connection, workspace))));
        if (planned is null)
            return Pages.NotFound();
        var predicted = new List<(MeterToSetUp Meter, KnownValue Known)>();
        var (question, errors) = Resolve(planned, new FieldSetUpUnits(planned.Field, choice: null), predicted);
        if (question is null)
            return ProblemResult.Invalid(errors);
        if (questions.Validate(question) is { IsValid: false } broken)
            return ProblemResult.Invalid(RequestFilter.Errors(broken));
        var answerUnits = CatchPlanCalculation.UnitsFor(question, units);
        var outcome = CatchPlanEvaluation.Evaluate(CatchPlanCalculation.ToEngine(question));
        return outcome.IsAnswered
            ? JsonAnswer.Of(
                CatchPlanCalculation.ToAnswer(
                    outcome.Result,
                    answerUnits,
                    [.. predicted.Select(one => Predicted(one.Meter, one.Known, answerUnits))]
                )
            )
            : ProblemResult.Refused(outcome.Refusals, answerUnits.Display);
    }

    private static PlannedCatch? Read(string id, ReferredRecords records)
    {
        if (records.Known.Find<PlanRequest>(RecordKind.Plans, id) is not { } plan)
            return null;
        var scale = records.Scale(plan.Scale!, nameof(plan.Scale));
        var container = plan.Container is { } containerId ? records.Container(containerId, nameof(plan.Container)) : null;
        return new(PlannedField.Read(plan, records, ElementsRead.Fitted), scale, container);
    }

    private static (CatchPlanRequest? Question, IReadOnlyList<ProblemError> Errors) Resolve(
        PlannedCatch planned,
        FieldSetUpUnits units,
        List<(MeterToSetUp Meter, KnownValue Known)> predicted
    )
    {
        var rates = FieldRates.Of(FieldSetUpMapping.ToEngine(planned.Field));
        var meters = new List<MeterOfPlan>();
        var open = new List<OpenPoint>();
        // A product that the nutrients do not need is not put down.
        foreach (var (place, rate) in rates.Meters.Index().Where(meter => !meter.Item.IsOff))
        {
            if (rate.Meter.ValueOfFitted() is not { } known)
            {
                open.Add(rate.Meter.WithoutValue());
                continue;
            }

            meters.Add(Meter(planned.Field.Meters[place], rate, known, place, units));
            if (known.From == ValueOrigin.Displacement)
                predicted.Add((rate.Meter, known));
        }

        ProblemError[] errors = [.. planned.Field.AtOdds, .. open.Concat(rates.Open).Select(one => FieldSetUpMapping.Problem(one, units))];
        return errors.Length > 0 ? (null, errors) : (Question(planned, meters), []);
    }

    private static CatchPlanRequest Question(PlannedCatch planned, IReadOnlyList<MeterOfPlan> meters)
    {
        var plan = planned.Field.Plan;
        return new()
        {
            GroundSpeed = plan.GroundSpeed,
            WorkingSpeeds = plan.WorkingSpeeds,
            Drive = planned.Field.Machine!.Drive,
            WantedPrecision = plan.WantedPrecision,
            MaximumRunTime = plan.MaximumRunTime,
            MinimumRunTime = plan.MinimumRunTime,
            ContainersAtHand = plan.ContainersAtHand,
            LiftLimit = plan.LiftLimit,
            Scale = planned.Scale!.OfTest(),
            Container = planned.Container is { } container
                ? new ContainerOfPlan
                {
                    Volume = container.Volume,
                    Tare = container.Tare,
                    Fill = container.Fill,
                }
                : null,
            Meters = meters,
            RestorePoints = planned.Field.Machine.RestorePoints,
        };
    }

    private static MeterOfPlan Meter(PlannedMeter meter, MeterRate rate, KnownValue known, int place, FieldSetUpUnits units)
    {
        var value = Reference(meter, known, place, units);
        return new()
        {
            Meter = meter.Planned.Meter,
            Product = meter.Product.Name,
            Material = meter.Product.Material,
            CoveredWidth = meter.Meter.CoveredWidth,
            TargetRate = units.Stated(rate, place),
            BulkDensity = meter.BulkDensity,
            FittedElement = meter.Element.DisplacementPerRevolution is { } displacement
                ? new FittedElement
                {
                    Name = meter.Element.Name,
                    Kind = meter.Element.Kind,
                    DisplacementPerRevolution = displacement,
                }
                : null,
            ValueInForce = known.From == ValueOrigin.ValueInForce ? value : null,
            StartValue = known.From == ValueOrigin.ValueInForce ? null : value,
            SpeedLimits = meter.Element.SpeedLimits ?? meter.Meter.SpeedLimits,
            PocketsPerRevolution = meter.Element.PocketsPerRevolution,
        };
    }

    private static ReferenceOfTest Reference(PlannedMeter meter, KnownValue known, int place, FieldSetUpUnits units)
    {
        if (known.From == ValueOrigin.StartValue)
            return meter.Planned.StartValue!;
        var value = units.Value(place, known).MassPerRevolution(known.Value);
        return new ReferenceOfTest
        {
            Value = value.Value,
            Unit = value.Unit,
            RelativeUncertainty = known.RelativeUncertainty is { } relative ? AnswerUnits.Percent(relative) : null,
        };
    }

    private static AssumptionAnswer Predicted(MeterToSetUp meter, KnownValue known, AnswerUnits units) =>
        new()
        {
            Name = "startValue",
            Value = units.Any(known.Value),
            Origin = "the volume of the element times the bulk density times a usual fill efficiency: nothing was measured yet",
            Meter = meter.Position,
        };

    // What the plan names is read before anything is computed.
    private sealed record PlannedCatch(PlannedField Field, ScaleRequest? Scale, ContainerRequest? Container);
}
