using System.Text.Json.Serialization;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.NewLots;

/// <summary>Finds what a new lot or treatment changes, and whether to test.</summary>
/// <remarks>
/// The rate for the same seeds per area from the new kernel mass; the mass per revolution predicted by the ratio of bulk densities;
/// whether to test now, at the next fill or not at all; and what is sown if nothing is changed. The rule: test now when a density is
/// unknown, or when the value in force is within the tolerance of the truth with a probability under 0.80; no test when lot,
/// treatment and density are the same and that probability is 0.95 or more; otherwise test at the next fill. Nothing is stored.
/// </remarks>
/// <request>The value in force and the two lots.</request>
/// <response code="200">Verdict, predicted mass per revolution, rate and effects.</response>
internal static class NewLotCalculation
{
    public static Calculation<NewLotRequest, NewLotQuestion, NewLotResult, NewLotAnswer> Declaration { get; } =
        new(typeof(NewLotCalculation))
        {
            Name = "new-lot",
            Tag = "New lots",
            Says = "What another lot or treatment changes, and whether to test.",
            Json = NewLotJson.Default,
            Units = UnitsFor,
            Question = ToEngine,
            Evaluate = question => NewLotEvaluation.Evaluate(question),
            Refusals = [],
            Answer = (request, result, units) => ToAnswer(result, units, request.Price?.Currency),
            Verdict = answer => answer.Verdict,
        };

    public static AnswerUnits UnitsFor(NewLotRequest request, string? choice) =>
        AnswerUnits.For(
            choice,
            UsualUnits.With(
                Quantity.UnitOf(request.Rate),
                Quantity.UnitOf(request.SeedsPerArea),
                Quantity.UnitOf(request.Area),
                Quantity.UnitOf(request.ValueInForce),
                Quantity.UnitOf(request.LotBefore?.BulkDensity),
                Quantity.UnitOf(request.NewLot?.BulkDensity)
            )
        );

    public static NewLotQuestion ToEngine(NewLotRequest request) =>
        new()
        {
            ValueInForce = request.ValueInForce!.Read(),
            ValueUncertainty = request.ValueInForce.RelativeUncertainty?.Canonical(),
            Before = Read(request.LotBefore!),
            After = Read(request.NewLot!),
            SameLot = request.SameLot ?? false,
            Rate = MassPerAreaQuantity.Read(request.Rate),
            Seeds = CountPerAreaQuantity.Read(request.SeedsPerArea),
            Emergence = request.Emergence?.Canonical(),
            Area = AreaQuantity.Read(request.Area),
            PricePerKilogram = request.Price?.PerKilogram(),
            Tolerance = request.Tolerance?.Canonical(),
            DayToDay = request.DayToDay?.Canonical(),
            FillOfLots = request.FillChangeOfLot?.Canonical(),
            FillOfTreatments = request.FillChangeOfTreatment?.Canonical(),
            UnknownDensity = request.UnknownDensityChange?.Canonical(),
        };

    /// <param name="result">What changes.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="currency">Currency of the price; null without one.</param>
    public static NewLotAnswer ToAnswer(NewLotResult result, AnswerUnits units, string? currency)
    {
        var prediction = result.Prediction;
        var start = units.MassPerRevolution(prediction.Value);
        return new NewLotAnswer
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Verdict),
            Reasons =
            [
                .. result.Reasons.Select(reason => new LotReason
                {
                    Code = reason.Code.Word,
                    Detail = units.Text(reason.Detail),
                    Parts = units.Parts(reason.Detail),
                }),
            ],
            PredictedMassPerRevolution = units.Measured(prediction.Interval),
            PredictedChange = units.Ratio(prediction.Change),
            UncertaintyParts =
            [
                .. prediction.Parts.Select(part => new LotUncertainty
                {
                    Source = Words.Of(part.Source),
                    Relative = units.Ratio(part.Relative),
                }),
            ],
            ProbabilityWithinTolerance = result.ProbabilityOfValueInForce,
            ProbabilityWithinToleranceOfPrediction = result.ProbabilityOfPrediction,
            StartValue = new()
            {
                Value = start.Value,
                Unit = start.Unit,
                RelativeUncertainty = units.Ratio(prediction.Uncertainty.StandardUncertainty),
            },
            Rate = result.Rate is { } rate ? ToAnswer(rate, units) : null,
            EffectIfValueStays = result.IfValueStays is { } value ? ToAnswer(value, currency, units) : null,
            EffectIfNothingIsChanged = result.IfNothingIsChanged is { } nothing ? ToAnswer(nothing, currency, units) : null,
            Assumptions = units.Assumptions(result.Assumptions),
            Findings = units.Findings(result.Findings),
            Cautions = units.Cautions(result.Cautions),
            EngineVersion = EngineVersion.Current,
        };
    }

    private static SeedLot Read(LotOfChange lot) =>
        new()
        {
            Kernel = MassPerThousandQuantity.Read(lot.ThousandKernelMass),
            Density = BulkDensityQuantity.Read(lot.BulkDensity),
            DensityUncertainty = lot.BulkDensity?.RelativeUncertainty?.Canonical(),
            Germination = lot.Germination?.Canonical(),
            Purity = lot.Purity?.Canonical(),
            Treatment = lot.Treatment,
        };

    private static RateOfLot ToAnswer(LotRate rate, AnswerUnits units) =>
        new()
        {
            SeedsPerArea = units.CountPerArea(rate.Seeds),
            ForSameSeeds = rate.SameSeeds is { } seeds ? units.Rate(seeds) : null,
            ForSameStand = rate.SameStand is { } stand ? units.Rate(stand) : null,
        };

    private static EffectOfLot ToAnswer(LotEffect effect, string? currency, AnswerUnits units) =>
        new()
        {
            SetRate = units.Rate(effect.SetRate),
            AppliedRate = units.Rate(effect.AppliedRate),
            RateDeviation = units.MeasuredRatio(effect.RateDeviation),
            SeedsPerArea = effect.Seeds is { } seeds ? units.CountPerArea(seeds) : null,
            SeedsDeviation = effect.SeedsDeviation is { } seedsOff ? units.Ratio(seedsOff) : null,
            Plants = effect.Plants is { } plants ? units.CountPerArea(plants) : null,
            PlantsDeviation = effect.PlantsDeviation is { } plantsOff ? units.Ratio(plantsOff) : null,
            MassOverArea = effect.MassOverArea is { } mass ? units.Mass(mass) : null,
            TotalCost = effect.Cost is { } cost ? new Money { Value = AnswerUnits.Shown(cost), Currency = currency! } : null,
        };
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(NewLotRequest))]
[JsonSerializable(typeof(NewLotAnswer))]
internal sealed partial class NewLotJson : JsonSerializerContext;
