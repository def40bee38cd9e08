using CalibrationApi.Calculations.MeterSpeeds;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Http;
using CalibrationApi.Quantities;

namespace CalibrationApi.Plans;

/// <summary>Where the fan of a plan may stand: all its products share the air, so the limits of all of them hold at once.</summary>
internal static class FanSetUp
{
    private static readonly RequestValidator<MeterSpeedRequest> SpeedRules = new(TimeProvider.System);

    /// <summary>The answer, and what is in the way; null when no product states a limit, or no meter has both a rate and a value.</summary>
    /// <param name="field">The plan with its records.</param>
    /// <param name="meters">What was found for its meters, in the same order.</param>
    /// <param name="units">Units of the answer.</param>
    public static (FanAnswer? Answer, ObstacleOfPlan? Obstacle) Of(PlannedField field, IReadOnlyList<MeterSetUpAnswer> meters, string? units)
    {
        var carried = field.Meters.Zip(meters, (meter, found) => (Meter: meter, found.Values)).Where(one => one.Meter.Rate is not null && !one.Meter.IsOff).ToArray();
        // A question about a meter brings the one about the air with it; any of them does.
        var (asked, values) = Array.Find(carried, one => one.Values.Count > 0);
        if (asked is null || !Array.Exists(carried, one => one.Meter.Product.FanSpeedLimits is not null))
            return (null, null);
        var (answer, _) = Calculation.Ask(
            new MeterSpeedRequest
            {
                CoveredWidth = asked.Meter.CoveredWidth,
                Rates = [asked.Rate],
                GroundSpeeds = field.GroundSpeeds,
                Elements = [new ElementOfMeter { Name = values[0].Element, MassPerRevolution = new MassPerRevolutionQuantity { Value = values[0].Value, Unit = values[0].Unit } }],
                Fan = new FanOfMachine
                {
                    FanSpeed = field.Plan.SowingConditions?.FanSpeed is { Value: > 0 } planned ? planned : null,
                    Products = [.. carried.Select(one => new ProductInAir { Name = one.Meter.Product.Name, Rates = [one.Meter.Rate], CoveredWidth = one.Meter.Meter.CoveredWidth, FanSpeedLimits = one.Meter.Product.FanSpeedLimits })],
                },
            },
            SpeedRules,
            MeterSpeedCalculation.Declaration.Ask,
            units);
        var isWrong = answer?.Findings.Any(finding => finding.Code is FindingCode.OutsideFanWindow or FindingCode.NoCommonFanWindow) is true;
        return (answer?.Fan, isWrong ? new ObstacleOfPlan { Detail = answer!.Fan!.Headline } : null);
    }
}
