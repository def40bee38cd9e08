using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>From the contract to the engine and back; nothing is computed here.</summary>
internal static class CatchTestMapping
{
    /// <summary>Masses follow the first catch, rates the target rate, a value in force keeps its own unit.</summary>
    public static AnswerUnits UnitsFor(CatchTestRequest request, string? choice)
    {
        var first = request.Catches![0]!;
        var mass = Quantity.UnitOf(first.Net ?? first.Gross)!;
        var value = Quantity.UnitOf(request.ValueInForce)
            ?? Quantity.UnitOf(request.StartValue)
            ?? EnteredPerRevolution(request)
            ?? PerRevolutionLike(mass);
        return AnswerUnits.For(
            choice,
            [
                .. request.Conditions?.Units() ?? [],
                mass,
                value,
                Quantity.UnitOf(request.TargetRate),
                Quantity.UnitOf(request.Area),
                Quantity.UnitOf(request.Product?.BulkDensity),
            ]
        );
    }

    public static CatchTestQuestion ToEngine(CatchTestRequest request)
    {
        var counting = new RevolutionReading(request);
        return new CatchTestQuestion
        {
            Catches = [.. request.Catches!.Select(one => ReadCatch(one!, request, counting))],
            Scale = ScaleMapping.Read(request.Scale!),
            TareReading = Words.Read(request.TareReading, request.SharedTare is null ? TareReading.Each : TareReading.Shared),
            CountStart = Words.Read(request.CountStart, CountStart.Free),
            PocketsPerRevolution = request.PocketsPerRevolution,
            CaughtPoints = request.CaughtPoints is { } points
                ? new CaughtPoints(
                    points.Caught!.Value,
                    points.Total!.Value,
                    points.Spread?.Canonical() ?? CaughtPoints.DefaultRelativeSpread
                )
                : null,
            Material = Words.Read<ProductMaterial>(request.Product?.Material),
            Element = request.FittedElement?.Content(request.Product?.BulkDensity),
            OtherProducts = MistakeContextMapping.ReadKnownDeliveries(request),
            Conditions = request.Conditions?.Read(),
            SowingConditions = request.SowingConditions?.Read(),
            Reference = ReadReference(request),
            Predicted = request.PredictedValue is { } predicted
                ? new PredictedValue(predicted.Read(), predicted.RelativeUncertainty?.Canonical())
                : null,
            Earlier = request.EarlierTest is { } earlier ? SecondTestMapping.Read(earlier) : null,
            ControllerEntry = ReadEntry(request),
            TargetRate = MassPerAreaQuantity.Read(request.TargetRate),
            Area = AreaQuantity.Read(request.Area),
            PricePerKilogram = request.Product?.Price?.PerKilogram(),
            Limits = ReadLimits(request),
            ReadingAssumptions = [.. counting.Assumptions(), .. SpreadAssumption(request)],
            Context = MistakeContextMapping.Read(request),
            MixesMassUnits = MixesMassUnits(request),
        };
    }

    public static CatchTestAnswer ToAnswer(CatchTestRequest request, CatchTestResult result, AnswerUnits units)
    {
        var change = result.Change;
        return new CatchTestAnswer
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Decision.Verdict),
            MoreCatches = result.Decision.MoreCatches,
            ExpectedPrecision = result.Decision.ExpectedPrecision is { } precision ? units.Ratio(precision) : null,
            Reasons =
            [
                .. result.Reasons.Select(reason => new ReasonAnswer
                {
                    Code = reason.Code.Word,
                    Detail = units.Text(reason.Detail),
                    Parts = units.Parts(reason.Detail),
                }),
            ],
            MassPerRevolution = units.Measured(result.Estimate.Value),
            TotalMassOverTotalRevolutions = units.MassPerRevolution(result.TotalMassOverTotalRevolutions),
            MeanOfRatios = units.MassPerRevolution(result.MeanOfRatios),
            UncertaintyParts =
            [
                .. Parts(result.Estimate)
                    .Select(part => new UncertaintyPart { Source = part.Source, Relative = units.Ratio(part.Relative) }),
            ],
            Catches = [.. result.Catches.Select(one => ToAnswer(one, units))],
            Agreement = new AgreementAnswer
            {
                Spread = units.Ratio(result.Agreement.Spread),
                Q = result.Agreement.Q,
                QProbability = result.Agreement.QProbability,
                Agree = result.Agreement.Agree,
                Grubbs = result.Agreement.Grubbs,
            },
            Change = change is null ? null : units.MeasuredRatio(change.Delta),
            ChangeFrom = change is null ? null : Words.Of(change.Reference.Kind),
            ProbabilityWithinTolerance = change?.ProbabilityWithinTolerance,
            CombinedWithPrevious = change?.Combined is { } combined ? units.Measured(combined) : null,
            SecondTest = result.SecondTest is { } second ? SecondTestMapping.ToAnswer(second, units) : null,
            LikelyMistakes =
            [
                .. result
                    .LikelyMistakes.Shown.Concat(result.LikelyMistakes.AlsoPossible)
                    .Select(mistake => MistakeContextMapping.ToAnswer(mistake, units)),
            ],
            ValueToUse = result.ToUse is { } used ? units.MassPerRevolution(used.Value) : null,
            Enter = result.Enter is { } enter ? ToAnswer(enter, units) : null,
            MeasuredEntry = result.MeasuredEntry is { } measured ? ToAnswer(measured, units) : null,
            ValueInForceEntry = result.InForceEntry is { } inForce ? ToAnswer(inForce, units) : null,
            EffectIfValueInForceStays = result.EffectIfValueInForceStays is { } effect ? ToAnswer(effect, request, units) : null,
            Assumptions = units.Assumptions(result.Assumptions),
            Findings = units.Findings(result.Findings),
            EngineVersion = EngineVersion.Current,
        };
    }

    private static Catch ReadCatch(CatchOfTest one, CatchTestRequest request, RevolutionReading counting)
    {
        var revolutions = counting.Read(one);
        return one.Net is { } net
            ? Catch.Net(net.Read(), revolutions, one.Excluded?.Reason)
            : Catch.Weighed(one.Gross!.Read(), (one.Tare ?? request.SharedTare)!.Read(), revolutions, one.Excluded?.Reason);
    }

    private static ReferenceValue? ReadReference(CatchTestRequest request)
    {
        if ((request.ValueInForce ?? request.StartValue) is not { } reference)
            return null;
        return new ReferenceValue(
            reference.Read(),
            request.ValueInForce is null ? ReferenceKind.StartValue : ReferenceKind.ValueInForce,
            reference.RelativeUncertainty?.Canonical(),
            reference.FromAnotherScale
        )
        {
            MeasuredAt = reference.MeasuredAt,
            ScaleErrorFoundLater = reference.ScaleErrorFoundLater is { } later
                ? new LaterScaleError(later.Error!.Canonical(), later.StandardUncertainty!.Canonical())
                : null,
        };
    }

    private static ControllerEntry? ReadEntry(CatchTestRequest request) =>
        request.ControllerEntry is { } entry
            ? ControllerEntry.Of(
                Words.Read(entry.Form, ControllerForm.MassPerRevolution),
                UnitTable.Get(entry.Unit!),
                entry.Decimals!.Value,
                entry.Revolutions,
                PulsesPerRevolutionQuantity.Read(request.PulsesPerRevolution),
                BulkDensityQuantity.Read(request.Product?.BulkDensity),
                RotationQuantity.Read(request.MeterSpeed)
            )
            : null;

    public static CatchTestLimits ReadLimits(CatchTestData request) =>
        new()
        {
            Tolerance = request.Tolerance?.Canonical(),
            WantedPrecision = request.WantedPrecision?.Canonical(),
            PrecisionProbability = request.PrecisionProbability?.Canonical(),
            SecondTestChange = request.SecondTestChange?.Canonical(),
            DayToDay = request.DayToDay?.Canonical(),
            Repeatability = request.Repeatability?.Canonical(),
            RepeatabilityDegreesOfFreedom = request.RepeatabilityDegreesOfFreedom,
            CoverageProbability = request.CoverageProbability,
        };

    private static Assumption[] SpreadAssumption(CatchTestRequest request) =>
        request.CaughtPoints is { Spread: null } ? [CatchTestDefaults.Spread.Assumed("caughtPoints/spread")] : [];

    // One scale shows one unit. Two units in one test are legal, but more often a slip than a fact.
    private static bool MixesMassUnits(CatchTestRequest request)
    {
        var shown = Family(request.Scale!.Division);
        foreach (var one in request.Catches!)
        {
            if (Differs(one!.Gross) || Differs(one.Tare) || Differs(one.Net))
                return true;
        }

        return Differs(request.SharedTare);

        bool Differs(Quantity? quantity) => quantity is not null && Family(quantity) != shown;

        static string? Family(Quantity? quantity) =>
            quantity?.Unit switch
            {
                "g" or "t" => "kg",
                "oz" => "lb",
                var unit => unit,
            };
    }

    private static Unit? EnteredPerRevolution(CatchTestRequest request) =>
        request.ControllerEntry is { Unit: { } symbol } && UnitTable.Get(symbol) is { Dimension: Dimension.MassPerRevolution } unit
            ? unit
            : null;

    private static Unit PerRevolutionLike(Unit mass) =>
        UnitTable.Find($"{mass.Symbol}/rev") ?? UnitTable.Get(mass.Symbol == "t" ? "kg/rev" : "lb/rev");

    private static IEnumerable<(string Source, double Relative)> Parts(MassPerRevolutionEstimate estimate)
    {
        yield return ("catches", estimate.Catches);
        yield return ("scale", estimate.Span);
        if (estimate.SharedTare > 0)
            yield return ("shared-tare", estimate.SharedTare);
        if (estimate.Points > 0)
            yield return ("points-not-caught", estimate.Points);
    }

    private static CatchAnswer ToAnswer(CatchReading one, AnswerUnits units) =>
        new()
        {
            Net = units.Mass(one.Net),
            Metered = one.Metered == one.Net ? null : units.Mass(one.Metered),
            Revolutions = units.Revolutions(one.Revolutions),
            MassPerRevolution = units.MassPerRevolution(one.MassPerRevolution),
            ExcludedBecause = one.ExcludedBecause,
        };

    private static EntryAnswer ToAnswer(ControllerNumber enter, AnswerUnits units) =>
        new()
        {
            Form = Words.Of(enter.Entry.Form),
            Revolutions = enter.Entry.Revolutions,
            Value = enter.Typed,
            Unit = enter.Entry.Unit.Symbol,
            RoundingError = units.Ratio(enter.RoundingError),
            ResultingMassPerRevolution = units.MassPerRevolution(enter.Resulting),
        };

    private static EffectAnswer ToAnswer(EffectOnApplication effect, CatchTestRequest request, AnswerUnits units) =>
        new()
        {
            AppliedRate = units.Rate(effect.AppliedRate),
            MassOverArea = effect.MassOverArea is { } mass ? units.Mass(mass) : null,
            TotalCost = effect.Cost is { } cost ? new Money { Value = cost, Currency = request.Product!.Price!.Currency! } : null,
        };
}
