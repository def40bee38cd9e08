using System.Globalization;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.CatchPlans;

/// <summary>Rules of a catch plan.</summary>
internal sealed class CatchPlanRequestValidator : AbstractValidator<CatchPlanRequest>
{
    public CatchPlanRequestValidator()
    {
        RuleFor(plan => plan).Custom((plan, context) => CheckRuns(plan.MinimumRunTime, plan.MaximumRunTime, context));
        RuleFor(plan => plan).Custom(CheckTogether);
    }

    /// <summary>The shortest run is not above the longest.</summary>
    public static void CheckRuns<T>(TimeQuantity? shortest, TimeQuantity? longest, ValidationContext<T> context)
    {
        if (Rules.Canonical(shortest) > (Rules.Canonical(longest) ?? CatchPlanDefaults.LongestRunSeconds))
            context.Report(
                nameof(CatchPlanRequest.MinimumRunTime),
                SharedCodes.SettingsAtOdds,
                "The shortest run is above the longest. Check whether they were swapped and whether both units are right."
            );
    }

    private static void CheckTogether(CatchPlanRequest plan, ValidationContext<CatchPlanRequest> context)
    {
        if (plan.Meters is not { Count: <= CatchPlanRequest.MostMeters } meters)
            return;
        var names = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < meters.Count; i++)
        {
            if (meters[i] is not { } meter)
                continue;
            var path = string.Create(CultureInfo.InvariantCulture, $"Meters[{i}]");
            if ((meter.Container ?? plan.Container)?.Volume is not null && meter.BulkDensity is null)
                context.Report(
                    $"{path}.BulkDensity",
                    ErrorCodes.DensityMissing,
                    "The volume of the container bounds this catch, which takes the bulk density of the product. Weigh a known volume and add it."
                );
            if (meter.Meter is { } name && !names.Add(name))
                context.Report(
                    $"{path}.Meter",
                    SharedCodes.SettingsAtOdds,
                    "Two meters have this name. Give each its own, or nobody knows which to stop."
                );
        }
    }
}

internal sealed class MeterOfPlanValidator : AbstractValidator<MeterOfPlan>
{
    public MeterOfPlanValidator()
    {
        RuleFor(meter => meter)
            .Custom(
                (meter, context) =>
                {
                    if (meter.ValueInForce is null && meter.StartValue is null)
                        context.Report(
                            nameof(meter.ValueInForce),
                            ErrorCodes.MemberMissing,
                            "Add the value in force, or a startValue where none is in force yet."
                        );
                    if (meter.ValueInForce is not null && meter.StartValue is not null)
                        context.Report(
                            nameof(meter.StartValue),
                            SharedCodes.SettingsAtOdds,
                            "A start value is for a meter that has no value in force. Give one of the two."
                        );
                }
            );
    }
}

internal sealed class SpeedRangeValidator : AbstractValidator<SpeedRange>
{
    public SpeedRangeValidator() =>
        RuleFor(range => range).Custom((range, context) => RangeRules.CheckNotAbove(range.Minimum, range.Maximum, context));
}

internal sealed class RotationLimitsValidator : AbstractValidator<RotationLimits>
{
    public RotationLimitsValidator() =>
        RuleFor(limits => limits).Custom((limits, context) => RangeRules.CheckBelow(limits.Minimum, limits.Maximum, context));
}
