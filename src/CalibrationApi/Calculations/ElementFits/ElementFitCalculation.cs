using System.Text.Json.Serialization;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Calculations.VolumeChecks;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.ElementFits;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.VolumeChecks;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.ElementFits;

/// <summary>Finds which displacement per revolution a metering element needs, and which element at hand comes nearest.</summary>
/// <remarks>
/// The displacements with which the meter stays inside its speeds at every rate and ground speed, and the part of them that
/// does so with the wanted probability, for density and fill efficiency are only roughly known. Where no displacement
/// serves, the answer says what would: a narrower range of speeds or rates, or several elements. Elements at hand come best
/// first. Where the mass per revolution of an element was measured, ask <c>meter-speed</c>. No verdict: only a catch test
/// says what a meter delivers. Nothing is stored.
/// </remarks>
/// <request>The density, what is to be put down at which speeds, and the elements at hand.</request>
/// <response code="200">The displacements, and the elements beside them.</response>
internal static class ElementFitCalculation
{
    public static Calculation<ElementFitRequest, ElementFitQuestion, ElementFitResult, ElementFitAnswer> Declaration { get; } =
        new(typeof(ElementFitCalculation))
        {
            Name = "element-fit",
            Tag = "Element fits",
            Says = "Which displacement a metering element needs, and which element at hand comes nearest.",
            Json = ElementFitJson.Default,
            Units = UnitsFor,
            Question = ToEngine,
            Evaluate = ElementFitEvaluation.Evaluate,
            Refusals = ElementFitCodes.Refusals,
            Answer = ToAnswer,
            Verdict = answer => answer.Verdict,
        };

    /// <summary>Displacements follow the first element; without any they come in L, beside a density in pounds in ft3.</summary>
    public static AnswerUnits UnitsFor(ElementFitRequest request, string? choice)
    {
        var density = Quantity.UnitOf(request.BulkDensity)!;
        var rate = Quantity.UnitOf(request.Rates![0])!;
        return AnswerUnits.For(
            choice,
            VolumeCheckCalculation.UnitBeside(density),
            UnitTable.Get(density.Symbol.StartsWith("lb", StringComparison.Ordinal) ? "ft3" : "L"),
            rate.Symbol == "lb/ac" ? UnitTable.Get("lb/min") : null,
            density,
            rate,
            Quantity.UnitOf(request.GroundSpeeds![0]),
            Quantity.UnitOf(request.CoveredWidth),
            Quantity.UnitOf(request.SpeedLimits!.Minimum),
            Quantity.UnitOf(request.Elements?[0]!.Displacement)
        );
    }

    public static ElementFitQuestion ToEngine(ElementFitRequest request) =>
        new()
        {
            CoveredWidth = request.CoveredWidth!.Read(),
            Rates = [.. request.Rates!.Select(rate => rate!.Read())],
            GroundSpeeds = [.. request.GroundSpeeds!.Select(speed => speed!.Read())],
            SlowestMeter = request.SpeedLimits!.Minimum!.Read(),
            FastestMeter = request.SpeedLimits.Maximum!.Read(),
            Density = VolumeCheckCalculation.Read(request.BulkDensity!),
            Fill = new StatedFill(request.FillEfficiency?.Canonical(), request.FillEfficiencySpread?.Canonical()),
            Elements =
            [
                .. (request.Elements ?? []).Select(element => new ElementAtHand(
                    element!.Name!,
                    VolumeCheckCalculation.Read(element.Displacement!),
                    Words.Read<ElementKind>(element.Kind)
                )),
            ],
            CoverageProbability = request.CoverageProbability,
        };

    public static ElementFitAnswer ToAnswer(ElementFitRequest request, ElementFitResult result, AnswerUnits units)
    {
        var coverage = request.CoverageProbability ?? CatchTestLimits.DefaultCoverage;
        return new ElementFitAnswer
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Verdict),
            Window = ToAnswer(result.Window, units),
            InnerWindow = result.Inner is var (lower, upper)
                ? new InnerWindowAnswer
                {
                    Lower = units.Volume(lower),
                    Upper = units.Volume(upper),
                    CoverageProbability = coverage,
                }
                : null,
            HighestNeed = ToAnswer(result.HighestNeed, units),
            LowestNeed = ToAnswer(result.LowestNeed, units),
            WaysOut = result.WaysOut is { } ways ? ToAnswer(ways, units) : null,
            Elements = [.. result.Elements.Select(element => ToAnswer(element, coverage, units))],
            FillEfficiency = VolumeCheckCalculation.Expected(result.FillEfficiency, coverage, units),
            SpreadParts = VolumeCheckCalculation.Parts(result.Parts, units),
            Cautions = units.Cautions(result.Cautions),
            Assumptions = units.Assumptions(result.Assumptions),
            Findings = units.Findings(result.Findings),
            EngineVersion = EngineVersion.Current,
        };
    }

    private static DisplacementWindowAnswer ToAnswer(DisplacementWindow window, AnswerUnits units) =>
        new()
        {
            Lower = units.Volume(window.Lower),
            Upper = units.Volume(window.Upper),
            Middle = units.Volume(window.Middle),
            IsEmpty = window.IsEmpty,
            Spread = units.Ratio(window.Spread),
            BestProbability = window.BestProbability,
        };

    private static ProductNeedAnswer ToAnswer(ProductNeed need, AnswerUnits units) =>
        new()
        {
            Rate = units.Rate(need.Rate),
            GroundSpeed = units.Speed(need.GroundSpeed),
            MassFlow = units.MassFlow(need.Flow),
        };

    private static WaysOutAnswer ToAnswer(WaysOut ways, AnswerUnits units) =>
        new()
        {
            MaximumGroundSpeed = ways.HighestGroundSpeed is { } fastest ? units.Speed(fastest) : null,
            MinimumGroundSpeed = ways.LowestGroundSpeed is { } slowest ? units.Speed(slowest) : null,
            MaximumRate = ways.HighestRate is { } most ? units.Rate(most) : null,
            MinimumRate = ways.LowestRate is { } least ? units.Rate(least) : null,
            Shares =
            [
                .. ways.Shares.Select(share => new ShareOfRatesAnswer
                {
                    MinimumRate = units.Rate(share.LowestRate),
                    MaximumRate = units.Rate(share.HighestRate),
                    Window = ToAnswer(share.Window, units),
                }),
            ],
        };

    private static FittingElementAnswer ToAnswer(FittingElement element, double coverage, AnswerUnits units) =>
        new()
        {
            Name = element.Element.Name,
            Kind = element.Element.Kind is { } kind ? Words.Of(kind) : null,
            Displacement = units.Volume(element.Element.Displacement.Value),
            Fits = element.Fits,
            LowestMeterSpeed = units.Rotation(element.LowestMeterSpeed),
            HighestMeterSpeed = units.Rotation(element.HighestMeterSpeed),
            TooSlowBy = element.TooSlow is { } slow ? units.Ratio(slow) : null,
            TooFastBy = element.TooFast is { } fast ? units.Ratio(fast) : null,
            DistanceFromMiddle = element.Distance,
            Probability = element.Probability,
            Expected = VolumeCheckCalculation.Expected(element.Delivery, coverage, units),
        };
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(ElementFitRequest))]
[JsonSerializable(typeof(ElementFitAnswer))]
internal sealed partial class ElementFitJson : JsonSerializerContext;
