using System.Text.Json.Serialization;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.DriveWheelTurns;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.DriveWheelTurns;

/// <summary>Finds the turns of a drive wheel for areas, and evaluates turn tests.</summary>
/// <remarks>
/// For ground-driven machines: how often to turn the drive wheel for an area, what has to fall meanwhile in all and from each
/// outlet, the rate that turn tests give with its uncertainty, whether it is close enough to its target, a first correction
/// of the setting, and outlets that differ from the others. Nothing is stored.
/// </remarks>
/// <request>The wheel, the width, and what is known beside them.</request>
/// <response code="200">Turns, catches, and the rate of the tests.</response>
internal static class DriveWheelTurnsCalculation
{
    public static Calculation<DriveWheelTurnsRequest, DriveWheelQuestion, DriveWheelResult, DriveWheelTurnsAnswer> Declaration { get; } =
        new(typeof(DriveWheelTurnsCalculation))
        {
            Name = "drive-wheel-turns",
            Tag = "Drive wheel turns",
            Says = "Turns of the drive wheel of a ground-driven machine for an area, and the rate that turning it gives.",
            Json = DriveWheelTurnsJson.Default,
            Units = UnitsFor,
            Question = ToEngine,
            Evaluate = question => DriveWheelEvaluation.Evaluate(question),
            Refusals = [],
            Answer = (_, result, units) => ToAnswer(result, units),
            Verdict = answer => answer.Verdict,
        };

    /// <summary>Areas follow the first one asked for, masses the first one weighed, otherwise both the target rate.</summary>
    public static AnswerUnits UnitsFor(DriveWheelTurnsRequest request, string? choice)
    {
        var rate = Quantity.UnitOf(request.TargetRate);
        var test = request.TurnTests is { Count: > 0 } tests ? tests[0] : null;
        var mass = Quantity.UnitOf(test?.Caught ?? test?.PerOutlet?[0]);
        var american = rate is { Symbol: "lb/ac" } || (rate is null && mass is { Symbol: "lb" or "oz" });
        mass ??= UnitTable.Get(american ? "lb" : "kg");
        return AnswerUnits.For(
            choice,
            rate ?? UnitTable.Get(american ? "lb/ac" : "kg/ha"),
            UnitTable.Get(american ? "ac" : "ha"),
            request.Areas is { Count: > 0 } areas ? Quantity.UnitOf(areas[0]) : null,
            mass,
            Quantity.UnitOf(request.MassPerRevolution) ?? UnitTable.Find($"{mass.Symbol}/rev") ?? UnitTable.Get("kg/rev"),
            Quantity.UnitOf(request.WorkingWidth)
        );
    }

    public static DriveWheelQuestion ToEngine(DriveWheelTurnsRequest request) =>
        new()
        {
            Wheel = Read(request.Wheel!),
            Width = request.WorkingWidth!.Read(),
            Outlets = request.Outlets,
            Skid = request.Skid?.Canonical(),
            Areas = [.. (request.Areas ?? []).Select(area => area!.Read())],
            TargetRate = MassPerAreaQuantity.Read(request.TargetRate),
            MeterRevolutionsPerTurn = request.MeterRevolutionsPerTurn?.Canonical(),
            MassPerRevolution = MassPerRevolutionQuantity.Read(request.MassPerRevolution),
            Tests = [.. (request.TurnTests ?? []).Select(test => Read(test!))],
            OutletsCaught = request.OutletsCaught ?? (request.TurnTests is { Count: > 0 } tests ? tests[0]!.PerOutlet?.Count : null),
            OutletSpread = request.OutletSpread?.Canonical(),
            Scale = request.Scale is { } scale ? ScaleMapping.Read(scale) : null,
            TurnResolution = RevolutionsQuantity.Read(request.TurnResolution),
            Setting = request.Setting,
            Tolerance = request.Tolerance?.Canonical(),
            Repeatability = request.Repeatability?.Canonical(),
            RepeatabilityDegreesOfFreedom = request.RepeatabilityDegreesOfFreedom,
        };

    public static DriveWheelTurnsAnswer ToAnswer(DriveWheelResult result, AnswerUnits units) =>
        new()
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Verdict),
            Reasons =
            [
                .. result.Reasons.Select(reason => new ReasonAnswer
                {
                    Code = reason.Code.Word,
                    Detail = units.Text(reason.Detail),
                    Parts = units.Parts(reason.Detail),
                }),
            ],
            Circumference = units.Length(result.Wheel.Circumference),
            CircumferenceFrom = Words.Of(result.Origin),
            AreaPerTurn = units.Area(result.Wheel.AreaPerTurn),
            Turns = [.. result.Turns.Select(turns => ToAnswer(turns, units))],
            NeededPerTurn = result.NeededPerTurn is { } perTurn ? units.MassPerRevolution(perTurn) : null,
            NeededPerMeterRevolution = result.NeededPerMeterRevolution is { } perRevolution ? units.MassPerRevolution(perRevolution) : null,
            NeededMeterRevolutionsPerTurn = Gearing(result.NeededMeterRevolutionsPerTurn),
            ExpectedRate = result.RateOfStatedMeter is { } expected ? units.Rate(expected) : null,
            Rate = result.Rate is { } rate ? units.MeasuredRate(rate) : null,
            TurnTests =
            [
                .. result.Tests.Select(test => new TurnTestAnswer
                {
                    Turns = units.Revolutions(new Revolutions(test.Turns)),
                    Area = units.Area(test.Area),
                    Metered = units.Mass(test.Metered),
                    Rate = units.Rate(test.Rate),
                }),
            ],
            Acceptance = result.Acceptance is { } acceptance
                ? new RateAcceptanceAnswer
                {
                    Deviation = units.MeasuredRatio(acceptance.Deviation),
                    WithinTolerance = acceptance.Within,
                    ProbabilityWithinTolerance = acceptance.Probability,
                }
                : null,
            Correction = result.Correction is { } correction
                ? new CorrectionAnswer
                {
                    Factor = units.Ratio(correction.Factor),
                    Setting = correction.Setting is { } setting ? AnswerUnits.Shown(setting) : null,
                    MeterRevolutionsPerTurn = Gearing(correction.MeterRevolutionsPerTurn),
                }
                : null,
            Outlets =
            [
                .. result.Outlets.Select(outlet => new OutletAnswer
                {
                    Caught = units.Mass(outlet.Caught),
                    Deviation = units.Ratio(outlet.Deviation),
                    WithinTolerance = outlet.Within,
                }),
            ],
            Assumptions = units.Assumptions(result.Assumptions),
            Findings = units.Findings(result.Findings),
            Cautions = units.Cautions(Caution.AtAJackedMachine),
            EngineVersion = EngineVersion.Current,
        };

    private static WheelMeasure Read(DriveWheelOfMachine wheel)
    {
        var uncertainty = wheel.RelativeUncertainty?.Canonical();
        return wheel switch
        {
            { Circumference: { } circumference } => new(circumference.Read(), WheelOrigin.Circumference, uncertainty),
            { MeasuredRun: { } run } => WheelMeasure.OfRun(run.Distance!.Read(), run.Turns!.Read().Count, uncertainty),
            _ => WheelMeasure.OfDiameter(wheel.Diameter!.Read(), uncertainty),
        };
    }

    private static TurnTest Read(TurnTestOfWheel test) =>
        test.PerOutlet is { } outlets
            ? TurnTest.Apart(test.Turns!.Read().Count, [.. outlets.Select(mass => mass!.Read())])
            : TurnTest.Together(test.Turns!.Read().Count, test.Caught!.Read());

    private static TurnsAnswer ToAnswer(TurnsForArea turns, AnswerUnits units) =>
        new()
        {
            Area = units.Area(turns.Area),
            Distance = units.Length(turns.Distance),
            Turns = units.Revolutions(new Revolutions(turns.Turns)),
            WholeTurns = units.Revolutions(new Revolutions(turns.WholeTurns)),
            MeterRevolutions = turns.MeterRevolutions is { } revolutions ? units.Revolutions(new Revolutions(revolutions)) : null,
            CatchInAll = MassOf(turns.Total, units),
            CatchPerOutlet = MassOf(turns.PerOutlet, units),
            CatchOfWholeTurns = MassOf(turns.TotalOfWholeTurns, units),
            CatchPerOutletOfWholeTurns = MassOf(turns.PerOutletOfWholeTurns, units),
        };

    private static RatioQuantity? Gearing(double? gearing) =>
        gearing is { } known ? new() { Value = AnswerUnits.Shown(known), Unit = "1" } : null;

    private static MassQuantity? MassOf(Mass? mass, AnswerUnits units) => mass is { } known ? units.Mass(known) : null;
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(DriveWheelTurnsRequest))]
[JsonSerializable(typeof(DriveWheelTurnsAnswer))]
internal sealed partial class DriveWheelTurnsJson : JsonSerializerContext;
