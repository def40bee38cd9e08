using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.FieldSetUps;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Plans;
using CalibrationApi.Records.Reading;
using CalibrationApi.Records.Referring;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>What was read at the machine, joined with what its records and its history say.</summary>
internal static class JoinedQuestion
{
    /// <summary>The question, without what may have been mistaken for what was named.</summary>
    /// <param name="data">The test as entered.</param>
    /// <param name="of">The records that it names.</param>
    /// <param name="used">What the history gives.</param>
    /// <param name="predicted">What the lot is expected to give; null when that is not known.</param>
    public static CatchTestRequest Of(RecordCatchTestRequest data, NamedRecords of, UsedHistory used, PredictedValueOfTest? predicted)
    {
        var (machine, meter, element, product, lot, scale, plan) = of;
        var planned = plan?.Meters?.FirstOrDefault(one => one!.Meter == data.Meter && one.Product == data.Product);
        return new CatchTestRequest
        {
            TareReading = data.TareReading,
            SharedTare = data.SharedTare,
            CountStart = data.CountStart,
            TurnResolution = data.TurnResolution,
            MeterSpeed = data.MeterSpeed,
            TimeResolution = data.TimeResolution,
            ValueTypedIn = data.ValueTypedIn,
            IndicatedMassResolution = data.IndicatedMassResolution,
            CaughtPoints = data.CaughtPoints,
            ValueInForce = data.ValueInForce ?? used.ValueInForce?.Value,
            StartValue = data.StartValue
                ?? used.StartValue?.Value
                ?? (data.ValueInForce is null && used.ValueInForce is null ? StartValueOf(plan, data) : null),
            TargetRate = data.TargetRate ?? planned?.TargetRate,
            Area = data.Area ?? plan?.Area,
            Catches = data.Catches,
            Repeatability = data.Repeatability ?? used.Repeatability?.Value,
            RepeatabilityDegreesOfFreedom = data.RepeatabilityDegreesOfFreedom ?? used.Repeatability?.DegreesOfFreedom,
            DayToDay = data.DayToDay ?? used.DayToDay?.Value,
            Tolerance = data.Tolerance,
            WantedPrecision = data.WantedPrecision ?? plan?.WantedPrecision,
            PredictedValue = data.PredictedValue ?? predicted,
            EarlierTest = data.EarlierTest,
            PrecisionProbability = data.PrecisionProbability,
            SecondTestChange = data.SecondTestChange,
            CoverageProbability = data.CoverageProbability,
            CatchPoints = data.CatchPoints ?? data.CaughtPoints?.Caught ?? meter.Outlets,
            RuledOutMistakes = data.RuledOutMistakes,
            Meter = NameOf(machine, meter),
            Product = new ProductOfTest
            {
                Name = product.Name,
                Material = product.Material,
                BulkDensity = lot?.BulkDensity ?? product.BulkDensity,
                Price = product.Price,
            },
            Scale = scale.OfTest(
                used.ScaleCheck is { } check
                    ? new KnownScaleErrorOfTest
                    {
                        Error = check.Error,
                        StandardUncertainty = check.StandardUncertainty,
                        CheckFailed = check.Failed,
                    }
                    : null
            ),
            CounterResolution = meter.CounterResolution,
            FittedElement = element.DisplacementPerRevolution is { } displacement
                ? new FittedElement
                {
                    Name = element.Name,
                    Kind = element.Kind,
                    DisplacementPerRevolution = displacement,
                }
                : null,
            Conditions = data.Conditions,
            SowingConditions = plan?.SowingConditions,
            PocketsPerRevolution = element.PocketsPerRevolution,
            PulsesPerRevolution = meter.PulsesPerRevolution,
            MeterRevolutionsPerTurn = meter.MeterRevolutionsPerTurn,
            ControllerEntry = meter.ControllerEntry,
        };
    }

    /// <summary>A rate that follows from the stand or the nutrients of the plan; null when it cannot be told.</summary>
    public static MassPerAreaQuantity? PlannedRate(WorkspaceReader reader, PlanRequest plan, RecordCatchTestRequest data)
    {
        // A test beside the plan has no rate in it; the records behind the plan need not be read.
        if (!plan.Meters!.Any(one => one!.Meter == data.Meter && one.Product == data.Product))
            return null;
        var field = PlannedField.Read(plan, new ReferredRecords(reader), ElementsRead.None);
        var (place, rate) = FieldRates
            .Of(FieldSetUpMapping.ToEngine(field))
            .Meters.Index()
            .FirstOrDefault(one => one.Item.Meter.Position == data.Meter && one.Item.Meter.Product.Key == data.Product);
        return rate is { IsOn: true } ? new FieldSetUpUnits(field, choice: null).Stated(rate, place) : null;
    }

    // A predicted value holds for the element and setting that it was planned with.
    private static ReferenceOfTest? StartValueOf(PlanRequest? plan, RecordCatchTestRequest data) =>
        plan
            ?.Meters?.FirstOrDefault(one =>
                one!.Meter == data.Meter
                && one.Product == data.Product
                && one.Element == data.Element
                && (one.Setting ?? "") == (data.Setting ?? "")
            )
            ?.StartValue;

    private static string NameOf(MachineRequest machine, MeterOfMachine meter)
    {
        var whole = $"{machine.Name}, {meter.Position}";
        return whole.EnumerateRunes().Count() <= Rules.LongestName ? whole : meter.Position!;
    }
}
