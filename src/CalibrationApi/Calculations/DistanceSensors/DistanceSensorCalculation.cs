using System.Text.Json.Serialization;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.DistanceSensors;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Wheels;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.DistanceSensors;

/// <summary>Evaluates the runs of a distance sensor over a measured course.</summary>
/// <remarks>
/// From one or more runs: pulses per distance and the rolling circumference with their uncertainty, slip against reference
/// runs, ground speed, the width that passes really cover, what wrong numbers in the controller do to the rate, and what to
/// type in. Nothing is stored.
/// </remarks>
/// <request>The runs, and what the controller holds.</request>
/// <response code="200">The evaluation.</response>
internal static class DistanceSensorCalculation
{
    public static Calculation<
        DistanceSensorRequest,
        DistanceSensorQuestion,
        DistanceSensorResult,
        DistanceSensorAnswer
    > Declaration { get; } =
        new(typeof(DistanceSensorCalculation))
        {
            Name = "distance-sensor",
            Tag = "Distance sensors",
            Says = "Whether distance, speed and width are right, and what it does to the rate when they are not.",
            Json = DistanceSensorJson.Default,
            Units = UnitsFor,
            Question = ToEngine,
            Evaluate = DistanceSensorEvaluation.Evaluate,
            Refusals = DistanceSensorCodes.Refusals,
            Answer = ToAnswer,
            Verdict = answer => answer.Verdict,
        };

    public static AnswerUnits UnitsFor(DistanceSensorRequest request, string? choice)
    {
        var distance = Quantity.UnitOf(request.Runs![0]!.Distance)!;
        var american = distance.Symbol is "ft" or "in";
        return AnswerUnits.For(
            choice,
            distance,
            UnitTable.Get(american ? "/ft" : "/m"),
            UnitTable.Get(american ? "mi/h" : "km/h"),
            UnitTable.Get(request.TargetRate?.Unit == "lb/ac" ? "lb" : "kg"),
            Quantity.UnitOf(request.TargetRate),
            Quantity.UnitOf(request.Area)
        );
    }

    public static DistanceSensorQuestion ToEngine(DistanceSensorRequest request) =>
        new()
        {
            Runs = [.. request.Runs!.Select(Read)],
            ReferenceRuns = [.. (request.ReferenceRuns ?? []).Select(Read)],
            Counted = request.Runs![0]!.Pulses is null ? CountedThing.Turns : CountedThing.Pulses,
            PulsesPerTurn = PulsesPerRevolutionQuantity.Read(request.PulsesPerTurn),
            DistanceResolution = LengthQuantity.Read(request.DistanceResolution),
            TurnResolution = RevolutionsQuantity.Read(request.TurnResolution),
            TapeLimit = request.TapeLimit?.Canonical(),
            Repeatability = request.Repeatability?.Canonical(),
            RepeatabilityDegreesOfFreedom = request.RepeatabilityDegreesOfFreedom,
            ValueInForce = request.ValueInForce is { } value ? Read(value) : null,
            ControllerEntry = request.ControllerEntry is { } entry ? Read(entry) : null,
            Width = request.Width is { } width
                ? new WorkingWidth(
                    WorkingWidth.OfOpeners(width.Openers!.Value, width.Spacing!.Read()),
                    LengthQuantity.Read(width.PassToPass),
                    LengthQuantity.Read(width.InForce)
                )
                : null,
            MeterDrive = Words.Read<MeterDrive>(request.MeterDrive),
            TargetRate = MassPerAreaQuantity.Read(request.TargetRate),
            Area = AreaQuantity.Read(request.Area),
            PricePerKilogram = request.Price?.PerKilogram(),
            Tolerance = request.Tolerance?.Canonical(),
            WantedPrecision = request.WantedPrecision?.Canonical(),
            SecondRunChange = request.SecondRunChange?.Canonical(),
        };

    public static DistanceSensorAnswer ToAnswer(DistanceSensorRequest request, DistanceSensorResult result, AnswerUnits units)
    {
        var (counts, estimate) = (result.Counts, result.Estimate);
        return new DistanceSensorAnswer
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Decision.Verdict),
            MoreRuns = result.Decision.MoreRuns,
            Reasons =
            [
                .. result.Reasons.Select(reason => new ReasonAnswer
                {
                    Code = reason.Code.Word,
                    Detail = units.Text(reason.Detail),
                    Parts = units.Parts(reason.Detail),
                }),
            ],
            PulsesPerDistance = counts.IsPulses ? units.MeasuredPulses(estimate.CountsPerMetre) : null,
            PulsesPerLength = counts.IsPulses ? units.CountPerLength(new CountPerLength(estimate.CountsPerMetre.Value)) : null,
            DistancePerPulse = counts.IsPulses
                ? units.Length(new Length(counts.Convert(SensorForm.DistancePerPulse, estimate.CountsPerMetre.Value)))
                : null,
            RollingCircumference = result.RollingCircumference is { } circumference ? units.MeasuredLength(circumference) : null,
            TotalPulsesOverTotalDistance = counts.IsPulses ? units.PulsesPerDistance(new PulsesPerDistance(estimate.TotalOverTotal)) : null,
            UncertaintyParts =
            [
                new RunUncertaintyPart { Source = "runs", Relative = units.Ratio(estimate.Runs) },
                new RunUncertaintyPart { Source = "tape", Relative = units.Ratio(estimate.Tape) },
            ],
            Runs = [.. result.Runs.Select(run => ToAnswer(run, counts, units))],
            Agreement = new RunAgreementAnswer
            {
                Spread = units.Ratio(result.Agreement.Spread),
                Q = result.Agreement.Q,
                QProbability = result.Agreement.QProbability,
                DirectionDifference = result.Agreement.DirectionDifference is { } difference ? units.Ratio(difference) : null,
                Agree = result.Agreement.Agree,
            },
            RunsForWantedPrecision = result.RunsForWantedPrecision,
            Skid = result.Skid is { } skid ? units.MeasuredRatio(skid) : null,
            Width = result.Width is { } width ? ToAnswer(width, units) : null,
            Change = result.Change is { } change ? units.MeasuredRatio(change.Delta) : null,
            ProbabilityWithinTolerance = result.Change?.ProbabilityWithinTolerance,
            Enter = result.Enter is { } enter ? ToAnswer(enter, units) : null,
            EffectIfNumbersStay = result.Effect is { } effect ? ToAnswer(effect, request, units) : null,
            Assumptions = units.Assumptions(result.Assumptions),
            Findings = units.Findings(result.Findings),
            Cautions = units.Cautions(Caution.OnAMeasuredCourse),
            EngineVersion = EngineVersion.Current,
        };
    }

    private static MeasuredRun Read(RunOfSensor? run) =>
        new(run!.Distance!.Read(), run.Pulses ?? run.Turns!.Read().Count)
        {
            DistanceUncertainty = LengthQuantity.Read(run.DistanceUncertainty),
            Direction = Words.Read<RunDirection>(run.Direction),
            Time = TimeQuantity.Read(run.Time),
        };

    private static SensorValue Read(ValueOfSensor value) =>
        value switch
        {
            { PulsesPerDistance: { } pulses } => new(SensorForm.PulsesPerDistance, pulses.Canonical()),
            { Pulses: { } count } => SensorValue.PulsesOver(count, value.Distance!.Read()),
            { DistancePerPulse: { } distance } => new(SensorForm.DistancePerPulse, distance.Canonical()),
            _ => new(SensorForm.WheelCircumference, value.WheelCircumference!.Canonical()),
        };

    private static SensorEntry Read(EntryOfSensor entry)
    {
        var form = Words.Read(entry.Form, SensorForm.PulsesPerDistance);
        if (form != SensorForm.PulsesPerDistance)
            return SensorEntry.LengthOf(form, UnitTable.Get(entry.Unit!), entry.Decimals!.Value);
        return entry.Distance is { } distance
            ? SensorEntry.PulsesOver(distance.Value!.Value, UnitTable.Get(distance.Unit!), entry.Decimals!.Value)
            : SensorEntry.PulsesOverUsualDistance(entry.Decimals!.Value);
    }

    private static RunAnswer ToAnswer(EvaluatedRun run, SensorCounts counts, AnswerUnits units) =>
        new()
        {
            Distance = units.Length(run.Distance),
            PulsesPerDistance = counts.IsPulses ? units.PulsesPerDistance(new PulsesPerDistance(run.CountsPerMetre)) : null,
            DistancePerTurn = counts.CanTell(SensorForm.WheelCircumference)
                ? units.Length(new Length(counts.Convert(SensorForm.WheelCircumference, run.CountsPerMetre)))
                : null,
            Deviation = units.Ratio(run.Deviation),
            GroundSpeed = run.GroundSpeed is { } speed ? units.Speed(speed) : null,
        };

    private static WidthAnswer ToAnswer(WorkingWidth width, AnswerUnits units) =>
        new()
        {
            Nominal = units.Length(width.Nominal),
            Effective = units.Length(width.Effective),
            InForce = units.Length(width.Used),
            Overlap = units.Length(width.Overlap),
            OverlapShare = units.Ratio(width.OverlapShare),
        };

    private static SensorEntryAnswer ToAnswer(SensorNumber number, AnswerUnits units)
    {
        var pulses = number.Entry.Form == SensorForm.PulsesPerDistance;
        return new SensorEntryAnswer
        {
            Form = Words.Of(number.Entry.Form),
            Value = number.Typed,
            Unit = pulses ? null : number.Entry.Unit.Symbol,
            // As the controller was described, whatever the units of the answer.
            Distance = pulses ? new LengthQuantity { Value = number.Entry.Distance, Unit = number.Entry.Unit.Symbol } : null,
            RoundingError = units.Ratio(number.RoundingError),
        };
    }

    private static DistanceEffectAnswer ToAnswer(DistanceEffect effect, DistanceSensorRequest request, AnswerUnits units) =>
        new()
        {
            RateChange = units.MeasuredRatio(effect.RateChange),
            DistanceCounted = effect.DistanceFactor is { } distance ? units.Ratio(distance) : null,
            WidthCounted = effect.WidthFactor is { } width ? units.Ratio(width) : null,
            AreaCounted = units.Ratio(effect.AreaFactor),
            AppliedRate = effect.Application is { } application ? units.Rate(application.AppliedRate) : null,
            MassOverArea = effect.Application?.MassOverArea is { } mass ? units.Mass(mass) : null,
            TotalCost = effect.Application?.Cost is { } cost
                ? new Money { Value = AnswerUnits.Shown(cost), Currency = request.Price!.Currency! }
                : null,
        };
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(DistanceSensorRequest))]
[JsonSerializable(typeof(DistanceSensorAnswer))]
internal sealed partial class DistanceSensorJson : JsonSerializerContext;
