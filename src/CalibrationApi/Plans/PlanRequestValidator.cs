using CalibrationApi.CatchPlans;
using CalibrationApi.CatchTests;
using CalibrationApi.Http;
using CalibrationApi.Records;
using FluentValidation;

namespace CalibrationApi.Plans;

/// <summary>Rules of a plan.</summary>
internal sealed class PlanRequestValidator : DescribedRequestValidator<PlanRequest>
{
    public PlanRequestValidator()
    {
        RuleFor(plan => plan.Machine).Needed();
        RuleFor(plan => plan.Machine).Text(64);
        RuleFor(plan => plan.Scale).Needed();
        RuleFor(plan => plan.Scale).Text(64);
        RuleFor(plan => plan.Container).Text(64);
        RuleFor(plan => plan.GroundSpeed).Needed();
        RuleFor(plan => plan.GroundSpeed).Measured();
        RuleFor(plan => plan.WorkingSpeeds!).SetValidator(new SpeedRangeValidator());
        RuleFor(plan => plan.Area).Measured();
        RuleFor(plan => plan.WantedPrecision).Measured(new(0.1, 50, "%"));
        RuleFor(plan => plan.LongestRun).Measured();
        RuleFor(plan => plan.LiftLimit).Measured();
        RuleFor(plan => plan.SowingConditions!).SetValidator(new ConditionsValidator());
        RuleFor(plan => plan.Meters).Needed();
        RuleFor(plan => plan.Meters).Items(1, 64);
        RuleForEach(plan => plan.Meters!).SetValidator(new MeterOfFieldPlanValidator()!);
    }
}

internal sealed class MeterOfFieldPlanValidator : AbstractValidator<MeterOfFieldPlan>
{
    public MeterOfFieldPlanValidator()
    {
        RuleFor(meter => meter.Meter).Needed();
        RuleFor(meter => meter.Meter).Text(Rules.LongestName);
        RuleFor(meter => meter.Element).Needed();
        RuleFor(meter => meter.Element).Text(Rules.LongestName);
        RuleFor(meter => meter.Setting).Text(Rules.LongestName);
        RuleFor(meter => meter.Product).Needed();
        RuleFor(meter => meter.Product).Text(64);
        RuleFor(meter => meter.Lot).Text(64);
        RuleFor(meter => meter.TargetRate).Needed();
        RuleFor(meter => meter.TargetRate).Measured();
        RuleFor(meter => meter.StartValue).Measured();
        RuleFor(meter => meter.StartValue!).SetValidator(new ReferenceOfTestValidator());
    }
}
