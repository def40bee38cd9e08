using System.Text.Json.Serialization;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.VolumeChecks;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.VolumeChecks;

/// <summary>Finds what a metering element should deliver by its volume.</summary>
/// <remarks>
/// Displacement times bulk density times fill efficiency, with an interval; as a start value for a catch plan. A value
/// measured or in force is compared with it: how far off it is, which fill efficiency it implies, and what may be wrong when
/// that is more than the element holds. No verdict: only a catch test says what the meter delivers. Nothing is stored.
/// </remarks>
/// <request>The element, the density, and a value to check.</request>
/// <response code="200">The expected value and the comparison.</response>
internal static class VolumeCheckCalculation
{
    public static Calculation<VolumeCheckRequest, VolumeCheckQuestion, VolumeCheckResult, VolumeCheckAnswer> Declaration { get; } =
        new(typeof(VolumeCheckCalculation))
        {
            Name = "volume-check",
            Tag = "Volume checks",
            Says = "What an element should deliver by its volume, and whether a value fits.",
            Json = VolumeCheckJson.Default,
            Units = UnitsFor,
            Question = ToEngine,
            Evaluate = question => VolumeCheckEvaluation.Evaluate(question),
            Refusals = [],
            Answer = ToAnswer,
            Verdict = answer => answer.Verdict,
        };

    /// <summary>
    /// Values follow the checked one, then the earlier one; otherwise they come in kg/rev, beside a density in pounds in lb/rev.
    /// </summary>
    public static AnswerUnits UnitsFor(VolumeCheckRequest request, string? choice)
    {
        var density = Quantity.UnitOf(request.BulkDensity)!;
        return AnswerUnits.For(
            choice,
            UnitBeside(density),
            density,
            Quantity.UnitOf(request.Displacement),
            Quantity.UnitOf(request.MassPerRevolution ?? request.LearnedFrom?.MassPerRevolution)
        );
    }

    /// <summary>The unit of a mass per revolution that follows from a bulk density.</summary>
    public static Unit UnitBeside(Unit density) =>
        UnitTable.Get(density.Symbol.StartsWith("lb", StringComparison.Ordinal) ? "lb/rev" : "kg/rev");

    public static VolumeCheckQuestion ToEngine(VolumeCheckRequest request) =>
        new()
        {
            Element = request.Element,
            Kind = Words.Read<ElementKind>(request.ElementKind),
            Displacement = Read(request.Displacement!),
            Density = Read(request.BulkDensity!),
            DensityUnit = Quantity.UnitOf(request.BulkDensity),
            Fill = request.LearnedFrom is { } earlier
                ? new LearnedFill(Read(earlier.MassPerRevolution!), Read(earlier.BulkDensity!), earlier.Spread?.Canonical())
                : new StatedFill(request.FillEfficiency?.Canonical(), request.FillEfficiencySpread?.Canonical()),
            Checked = request.MassPerRevolution is { } value ? Read(value) : null,
            CheckedIsInForce = request.MassPerRevolution?.InForce ?? false,
            CoverageProbability = request.CoverageProbability,
        };

    public static VolumeCheckAnswer ToAnswer(VolumeCheckRequest request, VolumeCheckResult result, AnswerUnits units)
    {
        var coverage = request.CoverageProbability ?? CatchTestLimits.DefaultCoverage;
        var expected = Expected(result.Expected, coverage, units);
        return new VolumeCheckAnswer
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Verdict),
            Expected = expected,
            FillEfficiency = Expected(result.FillEfficiency, coverage, units),
            SpreadParts = Parts(result.Parts, units),
            StartValue = new ReferenceOfTest
            {
                Value = expected.Value,
                Unit = expected.Unit,
                RelativeUncertainty = expected.Spread,
            },
            Checked = result.Checked is { } value
                ? new CheckedAnswer
                {
                    Ratio = units.Ratio(value.Ratio),
                    Deviations = value.Deviations,
                    FillEfficiency = Expected(value.FillEfficiency, coverage, units),
                }
                : null,
            Assumptions = units.Assumptions(result.Assumptions),
            Findings = units.Findings(result.Findings),
            EngineVersion = EngineVersion.Current,
        };
    }

    public static Uncertain<BulkDensity> Read(DensityOfProduct density) => new(density.Read(), density.RelativeUncertainty?.Canonical());

    public static Uncertain<Volume> Read(DisplacementOfElement displacement) =>
        new(displacement.Read(), displacement.RelativeUncertainty?.Canonical());

    private static Uncertain<MassPerRevolution> Read(EarlierMassPerRevolution value) =>
        new(value.Read(), value.RelativeUncertainty?.Canonical());

    public static ExpectedMassPerRevolution Expected(LogInterval<MassPerRevolution> value, double coverage, AnswerUnits units)
    {
        var median = units.MassPerRevolution(value.Median);
        return new ExpectedMassPerRevolution
        {
            Value = median.Value,
            Unit = median.Unit,
            Lower = units.MassPerRevolution(value.Lower),
            Upper = units.MassPerRevolution(value.Upper),
            CoverageProbability = coverage,
            Spread = units.Ratio(value.Spread),
        };
    }

    public static SpreadPart[] Parts(IReadOnlyList<(string Source, double Relative)> parts, AnswerUnits units) =>
        [.. parts.Select(part => new SpreadPart { Source = part.Source, Relative = units.Ratio(part.Relative) })];

    public static ExpectedRatio Expected(LogInterval<Ratio> value, double coverage, AnswerUnits units)
    {
        var median = units.Ratio(value.Median.Fraction);
        return new ExpectedRatio
        {
            Value = median.Value,
            Unit = median.Unit,
            Lower = units.Ratio(value.Lower.Fraction),
            Upper = units.Ratio(value.Upper.Fraction),
            CoverageProbability = coverage,
            Spread = units.Ratio(value.Spread),
        };
    }
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(VolumeCheckRequest))]
[JsonSerializable(typeof(VolumeCheckAnswer))]
internal sealed partial class VolumeCheckJson : JsonSerializerContext;
