using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Http;
using CalibrationApi.Quantities;
using FluentValidation;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>Rules of what is read at the machine, for every request that carries it.</summary>
internal abstract class CatchTestDataValidator<T> : RequestValidator<T>
    where T : CatchTestData
{
    public const int MostCatches = 50;
    public const int MostOthers = 20;
    public const double MostRepeatability = 30;
    public const double MostDayToDay = 20;

    protected CatchTestDataValidator()
    {
        RuleFor(test => test.TareReading).Word(Words.All<TareReading>());
        RuleFor(test => test.SharedTare).Measured();
        RuleFor(test => test.CountStart).Word(Words.All<CountStart>());
        RuleFor(test => test.TurnResolution).Measured(new(0, 10, "rev"));
        RuleFor(test => test.MeterSpeed).Measured();
        RuleFor(test => test.TimeResolution).Measured(new(0, 60, "s"));
        RuleFor(test => test.ValueTypedIn).Measured();
        RuleFor(test => test.IndicatedMassResolution).Measured(new(0, 100, "kg"));
        RuleFor(test => test.CaughtPoints!).SetValidator(new CaughtPointsOfTestValidator());
        RuleFor(test => test.ValueInForce).Measured();
        RuleFor(test => test.ValueInForce!).SetValidator(new ReferenceOfTestValidator());
        RuleFor(test => test.StartValue).Measured();
        RuleFor(test => test.StartValue!).SetValidator(new ReferenceOfTestValidator());
        RuleFor(test => test.PredictedValue).Measured();
        RuleFor(test => test.PredictedValue!).SetValidator(new PredictedValueOfTestValidator());
        RuleFor(test => test.EarlierTest).Measured();
        RuleFor(test => test.EarlierTest!).SetValidator(new EarlierTestOfTestValidator());
        RuleFor(test => test.TargetRate).Measured();
        RuleFor(test => test.Area).Measured();
        RuleFor(test => test.Catches).Needed();
        RuleFor(test => test.Catches).Items(1, MostCatches);
        RuleForEach(test => test.Catches!).SetValidator(new CatchOfTestValidator()!);
        RuleFor(test => test.CatchPoints).Whole(1, 1000);
        RuleFor(test => test.RuledOutMistakes).Items(0, MostOthers);
        RuleForEach(test => test.RuledOutMistakes).Word(MistakeCode.All);
        RuleFor(test => test.Repeatability).Measured(new(0.01, MostRepeatability, "%"));
        RuleFor(test => test.RepeatabilityDegreesOfFreedom).Number(1, 1000);
        RuleFor(test => test.DayToDay).Measured(new(0, MostDayToDay, "%"));
        RuleFor(test => test.Tolerance).Measured(new(0.1, 50, "%"));
        RuleFor(test => test.WantedPrecision).Measured(new(0.1, 50, "%"));
        RuleFor(test => test.PrecisionProbability).Measured(new(50, 99, "%"));
        RuleFor(test => test.SecondTestChange).Measured(new(0.1, 100, "%"));
        RuleFor(test => test.CoverageProbability).Number(0.5, 0.9999);
        RuleFor(test => test).Custom(CatchTestRules.CheckReadings);
    }
}

/// <summary>Rules of a catch test.</summary>
internal sealed class CatchTestRequestValidator : CatchTestDataValidator<CatchTestRequest>
{
    public CatchTestRequestValidator()
    {
        RuleFor(test => test.Meter).Text(Rules.LongestName);
        RuleFor(test => test.Product!).SetValidator(new ProductOfTestValidator());
        RuleFor(test => test.Scale).Needed();
        RuleFor(test => test.Scale!).SetValidator(new ScaleOfTestValidator());
        RuleFor(test => test.CounterResolution).Measured(new(0, 10, "rev"));
        RuleFor(test => test.FittedElement!).SetValidator(new FittedElementValidator());
        RuleFor(test => test.Conditions!).SetValidator(new ConditionsValidator());
        RuleFor(test => test.SowingConditions!).SetValidator(new ConditionsValidator());
        RuleFor(test => test.PocketsPerRevolution).Whole(1, 10_000);
        RuleFor(test => test.PulsesPerRevolution).Measured();
        RuleFor(test => test.MeterRevolutionsPerTurn).Measured(new(0.0001, 10_000, "1"));
        RuleFor(test => test.ControllerEntry!).SetValidator(new ControllerEntryOfTestValidator());
        RuleFor(test => test.Container!).SetValidator(new ContainerOfTestValidator());
        RuleFor(test => test.OtherContainers).Items(0, MostOthers);
        RuleForEach(test => test.OtherContainers!).SetValidator(new OtherContainerOfTestValidator()!);
        RuleFor(test => test.OtherElements).Items(0, MostOthers);
        RuleForEach(test => test.OtherElements!).SetValidator(new OtherDeliveryOfTestValidator()!);
        RuleFor(test => test.OtherProducts).Items(0, MostOthers);
        RuleForEach(test => test.OtherProducts!).SetValidator(new OtherDeliveryOfTestValidator()!);
        RuleFor(test => test).Custom(CatchTestRules.CheckNeeds);
    }
}

internal sealed class ProductOfTestValidator : RequestValidator<ProductOfTest>
{
    public ProductOfTestValidator()
    {
        RuleFor(product => product.Name).Text(Rules.LongestName);
        RuleFor(product => product.Material).Word(Words.All<ProductMaterial>());
        RuleFor(product => product.BulkDensity).Measured();
        RuleFor(product => product.Price!).SetValidator(new PriceValidator());
    }
}

internal sealed class ScaleOfTestValidator : RequestValidator<ScaleOfTest>
{
    public ScaleOfTestValidator()
    {
        RuleFor(scale => scale.Division).Needed();
        RuleFor(scale => scale.Division).Measured(new(0, 100, "kg", ExcludesLeast: true));
        RuleFor(scale => scale.AccuracyClass).Word(Words.All<AccuracyClass>());
        RuleFor(scale => scale.VerificationInterval).Measured(new(0, 100, "kg", ExcludesLeast: true));
        RuleFor(scale => scale.StatedAccuracy).Measured(new(0, 1000, "kg", ExcludesLeast: true));
        RuleFor(scale => scale.KnownError!).SetValidator(new KnownScaleErrorOfTestValidator());
        RuleFor(scale => scale.Capacity).Measured();
        RuleFor(scale => scale.ReadingScatter).Measured(new(0, 100, "kg"));
    }
}

internal sealed class KnownScaleErrorOfTestValidator : RequestValidator<KnownScaleErrorOfTest>
{
    /// <summary>Largest error, per cent.</summary>
    public const double Most = 20;

    public KnownScaleErrorOfTestValidator()
    {
        RuleFor(known => known.Error).Needed();
        RuleFor(known => known.Error).Measured(new(-Most, Most, "%"));
        RuleFor(known => known.StandardUncertainty).Needed();
        RuleFor(known => known.StandardUncertainty).Measured(new(0, Most, "%"));
    }
}

internal sealed class CaughtPointsOfTestValidator : RequestValidator<CaughtPointsOfTest>
{
    public CaughtPointsOfTestValidator()
    {
        RuleFor(points => points.Caught).Needed();
        RuleFor(points => points.Caught).Whole(1, 1000);
        RuleFor(points => points.Total).Needed();
        RuleFor(points => points.Total).Whole(1, 1000);
        RuleFor(points => points.Spread).Measured(new(0, 100, "%"));
        RuleFor(points => points).Custom((points, context) =>
        {
            if (points.Caught > points.Total)
                context.Report(nameof(points.Caught), ErrorCode.SettingsAtOdds, "More points were caught than the meter feeds. Check the two counts.");
        });
    }
}

internal sealed class ReferenceOfTestValidator : RequestValidator<ReferenceOfTest>
{
    public ReferenceOfTestValidator()
    {
        RuleFor(reference => reference.RelativeUncertainty).Measured(new(0, 100, "%"));
        RuleFor(reference => reference.ScaleErrorFoundLater!).SetValidator(new KnownScaleErrorOfTestValidator());
    }
}

internal sealed class PredictedValueOfTestValidator : RequestValidator<PredictedValueOfTest>
{
    public PredictedValueOfTestValidator() => RuleFor(predicted => predicted.RelativeUncertainty).Measured(new(0, 100, "%"));
}

internal sealed class EarlierTestOfTestValidator : RequestValidator<EarlierTestOfTest>
{
    public EarlierTestOfTestValidator()
    {
        RuleFor(earlier => earlier.Catches).Needed();
        RuleFor(earlier => earlier.Catches).Whole(1, CatchTestRequestValidator.MostCatches);
        RuleFor(earlier => earlier.CatchesUncertainty).Measured(new(0, 100, "%", ExcludesLeast: true));
        RuleFor(earlier => earlier.DegreesOfFreedom).Number(1, 1000 + CatchTestRequestValidator.MostCatches);
        RuleFor(earlier => earlier.SharedTareUncertainty).Measured(new(0, 100, "%"));
        RuleFor(earlier => earlier.ScaleUncertainty).Measured(new(0, 100, "%"));
        RuleFor(earlier => earlier.OccurredAt).Instant();
        RuleFor(earlier => earlier.Test).Text(Rules.LongestName);
    }
}

internal sealed class ControllerEntryOfTestValidator : RequestValidator<ControllerEntryOfTest>
{
    public ControllerEntryOfTestValidator()
    {
        RuleFor(entry => entry.Form).Needed();
        RuleFor(entry => entry.Form).Word(Words.All<ControllerForm>());
        RuleFor(entry => entry.Unit).Needed();
        RuleFor(entry => entry.Unit).ToldWords(ControllerUnits.All);
        RuleFor(entry => entry.Decimals).Needed();
        RuleFor(entry => entry.Decimals).Whole(0, ControllerEntry.MostDecimals);
        RuleFor(entry => entry).Custom((entry, context) =>
        {
            if (entry.Unit is null || entry.Form is null || !Words.All<ControllerForm>().Contains(entry.Form))
                return;
            var units = UnitTable.Of(ControllerEntry.DimensionOf(Words.Read(entry.Form, default(ControllerForm))));
            if (units.Any(unit => unit.Symbol == entry.Unit))
                return;
            var code = UnitTable.Ambiguous.ContainsKey(entry.Unit) ? ErrorCode.UnitAmbiguous
                : UnitTable.Find(entry.Unit) is null ? ErrorCode.UnitUnknown : ErrorCode.UnitWrongDimension;
            context.Report(nameof(entry.Unit), code, $"A controller entry of the form {entry.Form} takes one of: {string.Join(", ", units.Select(unit => unit.Symbol))}.");
        });
    }
}

internal sealed class CatchOfTestValidator : RequestValidator<CatchOfTest>
{
    public CatchOfTestValidator()
    {
        RuleFor(one => one.Gross).Measured();
        RuleFor(one => one.Tare).Measured(new(0, 1000, "t"));
        // A net mass, revolutions, pulses or turns at or below zero get their own codes and sentences.
        RuleFor(one => one.Net).Measured(new(-1000, 1000, "t"), told: QuantityLimits.Of(Dimension.Mass));
        RuleFor(one => one.Revolutions).Measured(new(-1_000_000, 1_000_000, "rev"), told: QuantityLimits.Of(Dimension.Revolutions));
        RuleFor(one => one.Pulses).PositiveNumber(1e12);
        RuleFor(one => one.Turns).Measured(new(-1_000_000, 1_000_000, "rev"), told: QuantityLimits.Of(Dimension.Revolutions));
        RuleFor(one => one.IndicatedMass).Measured();
        RuleFor(one => one.RunTime).Measured();
        RuleFor(one => one.Excluded!).SetValidator(new ExclusionValidator());
    }
}

internal sealed class ExclusionValidator : RequestValidator<Exclusion>
{
    public ExclusionValidator()
    {
        RuleFor(excluded => excluded.Reason).Needed();
        RuleFor(excluded => excluded.Reason).Text(500);
    }
}
