using System.Globalization;
using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.Nutrients;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Records.Plans;

/// <summary>Rules of a plan.</summary>
internal sealed class PlanRequestValidator : AbstractValidator<PlanRequest>
{
    public PlanRequestValidator()
    {
        RuleFor(plan => plan)
            .Custom((plan, context) => CatchPlanRequestValidator.CheckRuns(plan.MinimumRunTime, plan.MaximumRunTime, context));
        RuleFor(plan => plan).Custom(CheckTogether);
    }

    private static void CheckTogether(PlanRequest plan, ValidationContext<PlanRequest> context)
    {
        NutrientRules.EachOnce(plan.Nutrients, target => target.Nutrient, nameof(plan.Nutrients), "target", context);
        var named = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < (plan.Meters?.Count ?? 0); i++)
        {
            if (plan.Meters![i] is not { } meter)
                continue;
            var path = string.Create(CultureInfo.InvariantCulture, $"{nameof(plan.Meters)}[{i}]");
            if (meter.Meter is { } position && !named.Add(position))
                context.Report(
                    $"{path}.{nameof(meter.Meter)}",
                    SharedCodes.SettingsAtOdds,
                    "This meter stands in the plan before, and it can put down one product only. Give each meter once."
                );
            if (meter is { TargetRate: not null, Stand: not null })
                context.Report(
                    $"{path}.{nameof(meter.Stand)}",
                    SharedCodes.SettingsAtOdds,
                    "The rate follows from the stand. Give the target rate or the stand, not both."
                );
            if (meter is { TargetRate: null, Stand: null } && plan.Nutrients is null)
                context.Report(
                    $"{path}.{nameof(meter.TargetRate)}",
                    ErrorCodes.MemberMissing,
                    "Add the target rate. For seed the stand will do in its place, for a fertilizer the nutrients of the plan."
                );
            if (meter.Stand is not null && meter.Lot is null)
                context.Report(
                    $"{path}.{nameof(meter.Lot)}",
                    ErrorCodes.MemberMissing,
                    "How much seed a stand takes depends on its lot. Add the lot, or give a target rate in place of the stand."
                );
        }
    }
}

internal sealed class StandOfPlanValidator : AbstractValidator<StandOfPlan>
{
    public StandOfPlanValidator()
    {
        RuleFor(stand => stand)
            .Custom(
                (stand, context) =>
                {
                    if (stand is { Emergence: null, Survival: null })
                        context.Report(
                            nameof(stand.Emergence),
                            ErrorCodes.MemberMissing,
                            "Add the field emergence, or the survival where germination is counted in."
                        );
                    if (stand is { Emergence: not null, Survival: not null })
                        context.Report(
                            nameof(stand.Survival),
                            SharedCodes.SettingsAtOdds,
                            "Survival has germination and emergence in it. Give emergence or survival, not both."
                        );
                }
            );
    }
}
