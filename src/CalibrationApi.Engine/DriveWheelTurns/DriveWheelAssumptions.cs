using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.DriveWheelTurns;

/// <summary>What had to be assumed of a drive wheel and its tests.</summary>
internal static class DriveWheelAssumptions
{
    public static List<Assumption> Of(DriveWheelQuestion question, bool isTested)
    {
        var assumptions = new List<Assumption>();
        if (question.Wheel.Origin == WheelOrigin.Diameter)
            assumptions.Add(
                new(
                    "wheel/circumference",
                    question.Wheel.Circumference,
                    "pi times the diameter; a loaded tyre rolls some percent shorter, so that it then covers less ground than reckoned"
                )
            );
        if (question.Skid is null)
            assumptions.Add(DriveWheelDefaults.Skid.Assumed("skid"));
        if (question.Tolerance is null && (question.TargetRate is not null || question.Tests.Any(test => test.PerOutlet.Count > 0)))
            assumptions.Add(DriveWheelDefaults.Tolerance.Assumed("tolerance"));
        if (!isTested)
            return assumptions;
        if (question.Wheel.RelativeUncertainty is null)
            assumptions.Add(
                question.Wheel.Origin == WheelOrigin.Diameter
                    ? new(
                        "wheel/relativeUncertainty",
                        null,
                        "reckoned from the diameter: taken as 2 %, standard; judgement, no published source"
                    )
                    : DriveWheelDefaults.CircumferenceUncertainty.Assumed("wheel/relativeUncertainty")
            );
        if (question.TurnResolution is null)
            assumptions.Add(DriveWheelDefaults.TurnResolution.Assumed("turnResolution"));
        if (DriveWheelEvaluation.Prior(question).Assumed(question.Repeatability, question.RepeatabilityDegreesOfFreedom) is { } assumed)
            assumptions.Add(assumed);
        if (question.OutletsCaught is null && question.Outlets > 1)
            assumptions.Add(new("outletsCaught", null, "not stated: taken as all outlets") { Number = question.Outlets });
        if (question.OutletsCaught < question.Outlets && question.OutletSpread is null)
            assumptions.Add(
                question.Tests.All(test => test.PerOutlet.Count >= 3)
                    ? new("outletSpread", null, "taken from the outlets that were weighed one by one")
                    : DriveWheelDefaults.Spread.Assumed("outletSpread")
            );
        var heaviest = new Mass(
            question.Tests.Max(test => test.PerOutlet.Count > 0 ? test.PerOutlet.Max(mass => mass.Kilograms) : test.Caught.Kilograms)
        );
        assumptions.Add(
            question.Scale is { } scale
                ? scale.SpanAssumption(heaviest)
                : new(
                    "scale",
                    null,
                    "not stated: 0.5 % of the load for its error, and nothing for its rounding; judgement, no published source"
                )
        );
        return assumptions;
    }
}
