using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Http;
using CalibrationApi.Quantities;

namespace CalibrationApi.Calculations.NewLots;

/// <summary>From the contract to the engine and back; nothing is computed here.</summary>
internal static class NewLotMapping
{
    public static AnswerUnits UnitsFor(NewLotRequest request, string? choice) => AnswerUnits.For(choice, UsualUnits.With(
        Quantity.UnitOf(request.Rate),
        Quantity.UnitOf(request.SeedsPerArea),
        Quantity.UnitOf(request.Area),
        Quantity.UnitOf(request.ValueInForce),
        Quantity.UnitOf(request.LotBefore?.BulkDensity),
        Quantity.UnitOf(request.NewLot?.BulkDensity)));

    public static NewLotQuestion ToEngine(NewLotRequest request) => new()
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

    public static NewLotAnswer ToAnswer(NewLotRequest request, NewLotResult result, AnswerUnits units)
    {
        var prediction = result.Prediction;
        var start = units.MassPerRevolution(prediction.Value);
        return new NewLotAnswer
        {
            Headline = units.Display.Write(result.Headline),
            Verdict = Words.Of(result.Verdict),
            Reasons = [.. result.Reasons.Select(reason => new LotReason { Code = reason.Code, Detail = units.Display.Write(reason.Detail) })],
            PredictedMassPerRevolution = units.Measured(prediction.Interval),
            PredictedChange = units.Ratio(prediction.Ratio - 1),
            UncertaintyParts = [.. prediction.Parts.Select(part => new LotUncertainty { Source = Words.Of(part.Source), Relative = units.Ratio(part.Relative) })],
            ProbabilityWithinTolerance = result.ProbabilityOfValueInForce,
            ProbabilityWithinToleranceOfPrediction = result.ProbabilityOfPrediction,
            StartValue = new() { Value = start.Value, Unit = start.Unit, RelativeUncertainty = units.Ratio(prediction.Uncertainty.StandardUncertainty) },
            Rate = result.Rate is { } rate ? ToAnswer(rate, units) : null,
            EffectIfValueStays = result.IfValueStays is { } value ? ToAnswer(value, request, units) : null,
            EffectIfNothingIsChanged = result.IfNothingIsChanged is { } nothing ? ToAnswer(nothing, request, units) : null,
            Assumptions = units.Assumptions(result.Assumptions),
            Findings = units.Findings(result.Findings),
            Cautions = units.Cautions(result.Cautions),
            EngineVersion = EngineVersion.Current,
        };
    }

    private static SeedLot Read(LotOfChange lot) => new()
    {
        Kernel = MassPerThousandQuantity.Read(lot.ThousandKernelMass),
        Density = BulkDensityQuantity.Read(lot.BulkDensity),
        DensityUncertainty = lot.BulkDensity?.RelativeUncertainty?.Canonical(),
        Germination = lot.Germination?.Canonical(),
        Purity = lot.Purity?.Canonical(),
        Treatment = lot.Treatment,
    };

    private static RateOfLot ToAnswer(LotRate rate, AnswerUnits units) => new()
    {
        SeedsPerArea = units.CountPerArea(rate.Seeds),
        ForSameSeeds = rate.SameSeeds is { } seeds ? units.Rate(seeds) : null,
        ForSameStand = rate.SameStand is { } stand ? units.Rate(stand) : null,
    };

    private static EffectOfLot ToAnswer(LotEffect effect, NewLotRequest request, AnswerUnits units) => new()
    {
        SetRate = units.Rate(effect.SetRate),
        AppliedRate = units.Rate(effect.AppliedRate),
        RateDeviation = units.MeasuredRatio(effect.RateDeviation),
        SeedsPerArea = effect.Seeds is { } seeds ? units.CountPerArea(seeds) : null,
        SeedsDeviation = effect.SeedsDeviation is { } seedsOff ? units.Ratio(seedsOff) : null,
        Plants = effect.Plants is { } plants ? units.CountPerArea(plants) : null,
        PlantsDeviation = effect.PlantsDeviation is { } plantsOff ? units.Ratio(plantsOff) : null,
        MassOverArea = effect.MassOverArea is { } mass ? units.Mass(mass) : null,
        Cost = effect.Cost is { } cost ? new Money { Value = AnswerUnits.Shown(cost), Currency = request.Price!.Currency! } : null,
    };
}
