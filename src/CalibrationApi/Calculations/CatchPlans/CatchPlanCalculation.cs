using System.Text.Json.Serialization;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.CatchPlans;

/// <summary>Plans a catch test of one or several meters.</summary>
/// <remarks>
/// For each meter: how much to catch and which bound acts, revolutions, run time, meter speed against its limits,
/// container fill, and how many catches the wanted precision takes; for the common run: when to stop which meter, the
/// steps with their dependencies, and the cautions. Nothing is stored.
/// </remarks>
/// <request>The meters and what is at hand: scale, container, time.</request>
/// <response code="200">The plan.</response>
internal static class CatchPlanCalculation
{
    public static Calculation<CatchPlanRequest, CatchPlanQuestion, CatchPlanResult, CatchPlanAnswer> Declaration { get; } =
        new(typeof(CatchPlanCalculation))
        {
            Name = "catch-plan",
            OperationId = "planCatch",
            Tag = "Catch plans",
            Says = "How much to catch, for how long, in which container, and when each meter stops.",
            Json = CatchPlanJson.Default,
            Units = UnitsFor,
            Question = ToEngine,
            Evaluate = CatchPlanEvaluation.Evaluate,
            Refusals = CatchPlanCodes.Refusals,
            Answer = (_, result, units) => ToAnswer(result, units),
            Verdict = answer => answer.Verdict,
        };

    /// <summary>Masses follow the division of the scale, everything else the first meter.</summary>
    public static AnswerUnits UnitsFor(CatchPlanRequest request, string? choice)
    {
        var first = request.Meters![0]!;
        var rate = Quantity.UnitOf(first.TargetRate)!;
        return AnswerUnits.For(
            choice,
            UnitTable.Get(
                request.Scale!.Division!.Unit is "g" or "t" ? "kg"
                : request.Scale.Division.Unit is "oz" ? "lb"
                : request.Scale.Division.Unit!
            ),
            rate,
            UnitTable.Get(rate.Symbol == "lb/ac" ? "ac" : "ha"),
            Quantity.UnitOf(request.GroundSpeed),
            Quantity.UnitOf(first.CoveredWidth),
            Quantity.UnitOf(first.ValueInForce ?? first.StartValue),
            Quantity.UnitOf(first.SpeedLimits?.Maximum ?? first.SpeedLimits?.Minimum)
        );
    }

    public static CatchPlanQuestion ToEngine(CatchPlanRequest request) =>
        new()
        {
            GroundSpeed = request.GroundSpeed!.Read(),
            LowestWorkingSpeed = SpeedQuantity.Read(request.WorkingSpeeds?.Minimum),
            HighestWorkingSpeed = SpeedQuantity.Read(request.WorkingSpeeds?.Maximum),
            Drive = Words.Read(request.Drive, MeterDrive.Separate),
            Scale = ScaleMapping.Read(request.Scale!),
            TareReading = Words.Read(request.TareReading, TareReading.Each),
            CounterResolution = RevolutionsQuantity.Read(request.CounterResolution),
            CountStart = Words.Read(request.CountStart, CountStart.Free),
            Container = Read(request.Container),
            LiftLimit = MassQuantity.Read(request.LiftLimit),
            LongestRun = TimeQuantity.Read(request.MaximumRunTime),
            ShortestRun = TimeQuantity.Read(request.MinimumRunTime),
            ContainersAtHand = request.ContainersAtHand,
            WantedPrecision = request.WantedPrecision?.Canonical(),
            PrecisionProbability = request.PrecisionProbability?.Canonical(),
            CoverageProbability = request.CoverageProbability,
            Meters = [.. request.Meters!.Select(meter => Read(meter!))],
            DisturbedPoints =
            [
                .. (request.RestorePoints ?? []).Select(point => new DisturbedPoint(point!.Name!, point.ToOpen, point.ToRestore)),
            ],
        };

    /// <param name="result">The plan.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="further">Assumptions that were made before the question.</param>
    public static CatchPlanAnswer ToAnswer(CatchPlanResult result, AnswerUnits units, params IReadOnlyList<AssumptionAnswer> further) =>
        new()
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Verdict),
            Meters = [.. result.Meters.Select(meter => ToAnswer(meter, units))],
            OneAfterTheOther = result.OneAfterTheOther,
            ContainersNeeded = result.ContainersNeeded,
            StopOrder =
            [
                .. result.StopOrder.SelectMany(
                    (stop, group) =>
                        stop.Meters.Select(
                            (meter, i) =>
                                new StopAnswer
                                {
                                    Meter = meter,
                                    Time = units.Time(stop.Times[i]),
                                    Group = group + 1,
                                }
                        )
                ),
            ],
            Steps =
            [
                .. result.Steps.Select(step => new StepAnswer
                {
                    Id = step.Id,
                    After = step.After,
                    Detail = units.Text(step.Detail),
                    Parts = units.Parts(step.Detail),
                    Meter = step.Meter,
                }),
            ],
            Cautions = units.Cautions(result.Cautions),
            Assumptions = [.. units.Assumptions(result.Assumptions), .. further],
            Findings = units.Findings(result.Findings),
            EngineVersion = EngineVersion.Current,
        };

    public static MeterSpeedLimits Read(RotationLimits? limits) =>
        new(RotationQuantity.Read(limits?.Minimum), RotationQuantity.Read(limits?.Maximum));

    private static Container? Read(ContainerOfPlan? container) =>
        container is null
            ? null
            : new Container(VolumeQuantity.Read(container.Volume), container.Tare!.Read(), container.Fill?.Canonical());

    private static PlannedMeter Read(MeterOfPlan meter) =>
        new()
        {
            Name = meter.Meter!,
            Product = meter.Product!,
            CoveredWidth = meter.CoveredWidth!.Read(),
            TargetRate = meter.TargetRate!.Read(),
            BulkDensity = BulkDensityQuantity.Read(meter.BulkDensity),
            Element = meter.FittedElement?.Content(meter.BulkDensity),
            Value = new ReferenceValue(
                (meter.ValueInForce ?? meter.StartValue)!.Read(),
                meter.ValueInForce is null ? ReferenceKind.StartValue : ReferenceKind.ValueInForce,
                (meter.ValueInForce ?? meter.StartValue)!.RelativeUncertainty?.Canonical()
            ),
            SpeedLimits = Read(meter.SpeedLimits),
            Container = Read(meter.Container),
            Material = Words.Read<ProductMaterial>(meter.Material),
            Repeatability = meter.Repeatability?.Canonical(),
            PocketsPerRevolution = meter.PocketsPerRevolution,
        };

    private static MeterPlanAnswer ToAnswer(MeterPlan meter, AnswerUnits units) =>
        new()
        {
            Meter = meter.Meter.Name,
            Product = meter.Meter.Product,
            CatchMass = units.Mass(meter.CatchMass),
            Revolutions = units.Revolutions(meter.Revolutions),
            SimulatedSpeed = units.Speed(meter.SimulatedSpeed),
            RunTime = units.Time(meter.RunTime),
            MeterSpeed = units.Rotation(meter.MeterSpeed),
            WithinLimits = meter.WithinLimits,
            SpeedChecks =
                meter.SpeedChecks.Count == 0
                    ? null
                    :
                    [
                        .. meter.SpeedChecks.Select(check => new SpeedCheckAnswer
                        {
                            GroundSpeed = units.Speed(check.GroundSpeed),
                            MeterSpeed = units.Rotation(check.MeterSpeed),
                            WithinLimits = check.Within,
                        }),
                    ],
            ContainerFill = meter.ContainerFill is { } fill ? units.Ratio(fill.Fraction) : null,
            SimulatedArea = units.Area(meter.SimulatedArea),
            Catches = meter.Catches,
            ExpectedPrecision = units.Ratio(meter.ExpectedPrecision.Fraction),
            ContainerForLongRun = meter.ContainerForLongRun is { } volume ? units.Volume(volume) : null,
            CatchesForLongRun = meter.CatchesForLongRun,
            LimitedBy = ToAnswer(meter.LimitedBy, units),
            Bounds = [.. meter.Bounds.Select(bound => ToAnswer(bound, units))],
        };

    private static BoundAnswer ToAnswer(CatchBound bound, AnswerUnits units) =>
        new() { Bound = Words.Of(bound.Kind), Mass = units.Mass(bound.Mass) };
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(CatchPlanRequest))]
[JsonSerializable(typeof(CatchPlanAnswer))]
internal sealed partial class CatchPlanJson : JsonSerializerContext;
