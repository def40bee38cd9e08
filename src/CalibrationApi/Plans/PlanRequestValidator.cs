using System.Globalization;
using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Calculations.ProductRates;
using CalibrationApi.Calculations.SeedRowLimits;
using CalibrationApi.Engine.SeedRowLimits;
using CalibrationApi.Http;
using CalibrationApi.Nutrients;
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
        RuleFor(plan => plan.ShortestRun).Measured();
        RuleFor(plan => plan).Custom((plan, context) => CatchPlanRequestValidator.CheckRuns(plan.ShortestRun, plan.LongestRun, context));
        RuleFor(plan => plan.ContainersAtHand).Whole(1, 1000);
        RuleFor(plan => plan.LiftLimit).Measured();
        RuleFor(plan => plan.FieldEfficiency).Measured(new(0, 100, "%", ExcludesLeast: true));
        RuleFor(plan => plan.Nutrients).Items(1, 4);
        RuleForEach(plan => plan.Nutrients!).SetValidator(new WantedNutrientValidator()!);
        RuleFor(plan => plan.NutrientCredits).Items(0, 20);
        RuleForEach(plan => plan.NutrientCredits!).SetValidator(new CreditedNutrientValidator()!);
        RuleFor(plan => plan.SeedRow!).SetValidator(new SeedRowOfPlanValidator());
        RuleFor(plan => plan.SowingConditions!).SetValidator(new ConditionsValidator());
        RuleFor(plan => plan.Meters).Needed();
        RuleFor(plan => plan.Meters).Items(1, 64);
        RuleForEach(plan => plan.Meters!).SetValidator(new MeterOfFieldPlanValidator()!);
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
                context.Report($"{path}.{nameof(meter.Meter)}", ErrorCode.SettingsAtOdds, "This meter stands in the plan before, and it can put down one product only. Give each meter once.");
            if (meter is { TargetRate: not null, Stand: not null })
                context.Report($"{path}.{nameof(meter.Stand)}", ErrorCode.SettingsAtOdds, "The rate follows from the stand. Give the target rate or the stand, not both.");
            if (meter is { TargetRate: null, Stand: null } && plan.Nutrients is null)
                context.Report($"{path}.{nameof(meter.TargetRate)}", ErrorCode.MemberMissing, "Add the target rate. For seed the stand will do in its place, for a fertilizer the nutrients of the plan.");
            if (meter.Stand is not null && meter.Lot is null)
                context.Report($"{path}.{nameof(meter.Lot)}", ErrorCode.MemberMissing, "How much seed a stand takes depends on its lot. Add the lot, or give a target rate in place of the stand.");
        }
    }
}

internal sealed class MeterOfFieldPlanValidator : RequestValidator<MeterOfFieldPlan>
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
        RuleFor(meter => meter.TargetRate).Measured();
        RuleFor(meter => meter.Stand!).SetValidator(new StandOfPlanValidator());
        RuleFor(meter => meter.StartValue).Measured();
        RuleFor(meter => meter.StartValue!).SetValidator(new ReferenceOfTestValidator());
    }
}

internal sealed class StandOfPlanValidator : RequestValidator<StandOfPlan>
{
    public StandOfPlanValidator()
    {
        RuleFor(stand => stand.Plants).Needed();
        RuleFor(stand => stand.Plants).Measured();
        RuleFor(stand => stand.Emergence).Measured(new(0, 100, "%", ExcludesLeast: true));
        RuleFor(stand => stand.Survival).Measured(new(0, 100, "%", ExcludesLeast: true));
        RuleFor(stand => stand).Custom((stand, context) =>
        {
            if (stand is { Emergence: null, Survival: null })
                context.Report(nameof(stand.Emergence), ErrorCode.MemberMissing, "Add the field emergence, or the survival where germination is counted in.");
            if (stand is { Emergence: not null, Survival: not null })
                context.Report(nameof(stand.Survival), ErrorCode.SettingsAtOdds, "Survival has germination and emergence in it. Give emergence or survival, not both.");
        });
    }
}

internal sealed class SeedRowOfPlanValidator : RequestValidator<SeedRowOfPlan>
{
    public SeedRowOfPlanValidator()
    {
        RuleFor(row => row.Crop).Needed();
        RuleFor(row => row.Crop).Word(Words.All<Crop>());
        RuleFor(row => row.Soil).Needed();
        RuleFor(row => row.Soil).Word(Words.All<SoilTexture>());
        RuleFor(row => row.Moisture).Needed();
        RuleFor(row => row.Moisture).Word(Words.All<SeedbedMoisture>());
        RuleFor(row => row.Region).Word(Words.All<Region>());
        RuleFor(row => row.AcceptableStandLoss).Measured(SeedRowLimitRequestValidator.AcceptableLoss);
        RuleFor(row => row.LocalLimits).Items(1, 20);
        RuleForEach(row => row.LocalLimits!).SetValidator(new LocalLimitWithSeedValidator()!);
    }
}
