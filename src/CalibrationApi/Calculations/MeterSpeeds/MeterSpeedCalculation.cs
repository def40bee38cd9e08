using System.Text.Json.Serialization;
using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.MeterSpeeds;

/// <summary>Finds meter speeds, windows and the best metering element.</summary>
/// <remarks>
/// For each metering element: its speed at the lowest and highest rate and ground speed, the ground speeds at which each
/// rate can be put down, the rates that can be put down at each ground speed, and how much room is left to its limits.
/// Elements come best first. Nothing is stored.
/// </remarks>
/// <request>Rates, ground speeds and the elements that the machine has.</request>
/// <response code="200">Speeds, windows and ranking.</response>
internal static class MeterSpeedCalculation
{
    public static Calculation<MeterSpeedRequest, MeterSpeedQuestion, MeterSpeedResult, MeterSpeedAnswer> Declaration { get; } =
        new(typeof(MeterSpeedCalculation))
        {
            Name = "meter-speed",
            Tag = "Meter speeds",
            Says = "Which metering element serves which rates at which ground speeds.",
            Json = MeterSpeedJson.Default,
            Units = UnitsFor,
            Question = ToEngine,
            Evaluate = question => MeterSpeedEvaluation.Evaluate(question),
            Refusals = [],
            Answer = (_, result, units) => ToAnswer(result, units),
            Verdict = answer => answer.Verdict,
        };

    public static AnswerUnits UnitsFor(MeterSpeedRequest request, string? choice)
    {
        var limits = request.Elements![0]!.SpeedLimits ?? request.SpeedLimits;
        var limitsOfAir = request
            .Fan?.Products!.Select(product => product!.AirFlowLimits)
            .FirstOrDefault(one => one?.Minimum is not null || one?.Maximum is not null);
        return UnitsFor(
            choice,
            Quantity.UnitOf(request.Rates![0])!,
            Quantity.UnitOf(request.Fan?.AirFlow ?? limitsOfAir?.Minimum ?? limitsOfAir?.Maximum),
            Quantity.UnitOf(request.GroundSpeeds![0]),
            Quantity.UnitOf(request.CoveredWidth),
            Quantity.UnitOf(limits?.Maximum ?? limits?.Minimum)
        );
    }

    /// <summary>
    /// The same from the units of the first rate, of the air flow, of the first ground speed, of the width and of the limits of the meter
    /// speed.
    /// </summary>
    public static AnswerUnits UnitsFor(string? choice, Unit rate, Unit? airFlow, Unit? groundSpeed, Unit? width, Unit? meterSpeed)
    {
        var units = AnswerUnits.For(
            choice,
            rate,
            UnitTable.Get(rate.Symbol == "lb/ac" ? "ac" : "ha"),
            rate.Symbol == "lb/ac" ? UnitTable.Get("lb/min") : null,
            airFlow,
            groundSpeed,
            width,
            meterSpeed
        );
        // A day in the field is told in hours, what air carries by the cubic metre or foot, and no longer by the bushel.
        var air = units.Display[Dimension.VolumePerTime].Symbol;
        return units.With(UnitTable.Get("h"), UnitTable.Get(air == "ft3/min" ? "lb/ft3" : "kg/m3"));
    }

    public static MeterSpeedQuestion ToEngine(MeterSpeedRequest request) =>
        new()
        {
            CoveredWidth = request.CoveredWidth!.Read(),
            Rates = [.. request.Rates!.Select(rate => rate!.Read())],
            GroundSpeeds = [.. request.GroundSpeeds!.Select(speed => speed!.Read())],
            Elements = [.. request.Elements!.Select(element => Read(element!, request))],
            WorkingWidth = LengthQuantity.Read(request.WorkingWidth),
            FieldEfficiency = request.FieldEfficiency?.Canonical(),
            Stops = request.Stops is { } stops
                ? new FieldStops(
                    TimeQuantity.Read(stops.TurnTime),
                    LengthQuantity.Read(stops.RunLength),
                    TimeQuantity.Read(stops.RefillTime),
                    AreaQuantity.Read(stops.AreaPerFill)
                )
                : null,
            Area = AreaQuantity.Read(request.Area),
            TimePerDay = TimeQuantity.Read(request.TimePerDay),
            Fan = request.Fan is { } fan ? FanMapping.ToEngine(fan, request) : null,
        };

    public static MeterSpeedAnswer ToAnswer(MeterSpeedResult result, AnswerUnits units) =>
        new()
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Verdict),
            Elements = [.. result.Elements.Select(element => ToAnswer(element, units))],
            Capacity =
            [
                .. result.Capacity.Select(at => new CapacityAnswer
                {
                    GroundSpeed = units.Speed(at.GroundSpeed),
                    AreaPerHour = units.Area(at.AreaPerHour),
                    FieldEfficiency = units.Ratio(at.FieldEfficiency),
                    AreaPerDay = at.AreaPerDay is { } area ? units.Area(area) : null,
                    TimeForArea = at.TimeForArea is { } time ? units.Time(time) : null,
                }),
            ],
            Fan = result.Fan is { } fan ? FanMapping.ToAnswer(fan, units) : null,
            Cautions = units.Cautions(result.Cautions),
            Assumptions = units.Assumptions(result.Assumptions),
            Findings = units.Findings(result.Findings),
            EngineVersion = EngineVersion.Current,
        };

    private static MeteringElement Read(ElementOfMeter element, MeterSpeedRequest request) =>
        new(
            element.Name!,
            element.MassPerRevolution is { } constant
                ? DeliveryCurve.Constant(constant.Read())
                : DeliveryCurve.Through(element.MeasuredAt!.Select(point => (point!.MeterSpeed!.Read(), point.MassPerRevolution!.Read())))!,
            CatchPlanCalculation.Read(element.SpeedLimits ?? request.SpeedLimits),
            element.PocketsPerRevolution,
            new FittedElement
            {
                Name = element.Name,
                Kind = element.Kind,
                DisplacementPerRevolution = element.DisplacementPerRevolution,
            }.Content(request.BulkDensity)
        );

    private static ElementAnswer ToAnswer(ElementResult element, AnswerUnits units) =>
        new()
        {
            Name = element.Element.Name,
            Fits = element.Fits,
            Room = double.IsFinite(element.Margin) ? units.Ratio(element.Room) : null,
            Corners =
            [
                .. element.Corners.Select(corner => new CornerAnswer
                {
                    Rate = units.Rate(corner.Rate),
                    GroundSpeed = units.Speed(corner.GroundSpeed),
                    MeterSpeed = units.Rotation(corner.MeterSpeed),
                    WithinLimits = corner.Within,
                    DischargeSpacing = corner.DischargeSpacing is { } spacing ? units.Length(spacing) : null,
                }),
            ],
            SpeedWindows =
            [
                .. element.SpeedWindows.Select(window => new SpeedWindowAnswer
                {
                    Rate = units.Rate(window.Rate),
                    Minimum = window.Minimum is { } slowest ? units.Speed(slowest) : null,
                    Maximum = window.Maximum is { } fastest ? units.Speed(fastest) : null,
                }),
            ],
            RateWindows =
            [
                .. element.RateWindows.Select(window => new RateWindowAnswer
                {
                    GroundSpeed = units.Speed(window.GroundSpeed),
                    Minimum = window.Minimum is { } lowest ? units.Rate(lowest) : null,
                    Maximum = window.Maximum is { } highest ? units.Rate(highest) : null,
                }),
            ],
        };
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull
)]
[JsonSerializable(typeof(MeterSpeedRequest))]
[JsonSerializable(typeof(MeterSpeedAnswer))]
internal sealed partial class MeterSpeedJson : JsonSerializerContext;
