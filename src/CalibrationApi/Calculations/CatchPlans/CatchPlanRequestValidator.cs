using System.Globalization;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.CatchPlans;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Http;
using CalibrationApi.Quantities;
using FluentValidation;

namespace CalibrationApi.Calculations.CatchPlans;

/// <summary>Rules of a catch plan.</summary>
internal sealed class CatchPlanRequestValidator : RequestValidator<CatchPlanRequest>
{
    public const int MostMeters = 64;

    public CatchPlanRequestValidator()
    {
        RuleFor(plan => plan.GroundSpeed).Needed();
        RuleFor(plan => plan.GroundSpeed).Measured();
        RuleFor(plan => plan.WorkingSpeeds!).SetValidator(new SpeedRangeValidator());
        RuleFor(plan => plan.Drive).Word(Words.All<MeterDrive>());
        RuleFor(plan => plan.WantedPrecision).Measured(new(0.1, 50, "%"));
        RuleFor(plan => plan.PrecisionProbability).Measured(new(50, 99, "%"));
        RuleFor(plan => plan.CoverageProbability).Number(0.5, 0.9999);
        RuleFor(plan => plan.LongestRun).Measured();
        RuleFor(plan => plan.ShortestRun).Measured();
        RuleFor(plan => plan).Custom((plan, context) => CheckRuns(plan.ShortestRun, plan.LongestRun, context));
        RuleFor(plan => plan.ContainersAtHand).Whole(1, 1000);
        RuleFor(plan => plan.LiftLimit).Measured();
        RuleFor(plan => plan.Scale).Needed();
        RuleFor(plan => plan.Scale!).SetValidator(new ScaleOfTestValidator());
        RuleFor(plan => plan.TareReading).Word(Words.All<TareReading>());
        RuleFor(plan => plan.CounterResolution).Measured(new(0, 10, "rev"));
        RuleFor(plan => plan.CountStart).Word(Words.All<CountStart>());
        RuleFor(plan => plan.Container!).SetValidator(new ContainerOfPlanValidator());
        RuleFor(plan => plan.Meters).Needed();
        RuleFor(plan => plan.Meters).Items(1, MostMeters);
        RuleForEach(plan => plan.Meters!).SetValidator(new MeterOfPlanValidator()!);
        RuleFor(plan => plan.DisturbedPoints).Items(0, 200);
        RuleForEach(plan => plan.DisturbedPoints!).SetValidator(new DisturbedPointOfPlanValidator()!);
        RuleFor(plan => plan).Custom(CheckTogether);
    }

    /// <summary>The shortest run is not above the longest.</summary>
    public static void CheckRuns<T>(TimeQuantity? shortest, TimeQuantity? longest, ValidationContext<T> context)
    {
        if (Rules.Canonical(shortest) > (Rules.Canonical(longest) ?? CatchPlanDefaults.LongestRunSeconds))
            context.Report(nameof(CatchPlanRequest.ShortestRun), ErrorCode.SettingsAtOdds, "The shortest run is above the longest. Check whether they were swapped and whether both units are right.");
    }

    private static void CheckTogether(CatchPlanRequest plan, ValidationContext<CatchPlanRequest> context)
    {
        if (plan.Meters is not { Count: <= MostMeters } meters)
            return;
        var names = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < meters.Count; i++)
        {
            if (meters[i] is not { } meter)
                continue;
            var path = string.Create(CultureInfo.InvariantCulture, $"Meters[{i}]");
            if ((meter.Container ?? plan.Container)?.Volume is not null && meter.BulkDensity is null)
                context.Report($"{path}.BulkDensity", ErrorCode.DensityMissing, "The volume of the container bounds this catch, which takes the bulk density of the product. Weigh a known volume and add it.");
            if (meter.Meter is { } name && !names.Add(name))
                context.Report($"{path}.Meter", ErrorCode.SettingsAtOdds, "Two meters have this name. Give each its own, or nobody knows which to stop.");
        }
    }
}

internal sealed class MeterOfPlanValidator : RequestValidator<MeterOfPlan>
{
    public MeterOfPlanValidator()
    {
        RuleFor(meter => meter.Meter).Needed();
        RuleFor(meter => meter.Meter).Text(Rules.LongestName);
        RuleFor(meter => meter.Product).Needed();
        RuleFor(meter => meter.Product).Text(Rules.LongestName);
        RuleFor(meter => meter.Material).Word(Words.All<ProductMaterial>());
        RuleFor(meter => meter.CoveredWidth).Needed();
        RuleFor(meter => meter.CoveredWidth).Measured(new(0, 200, "m", ExcludesLeast: true));
        RuleFor(meter => meter.TargetRate).Needed();
        RuleFor(meter => meter.TargetRate).Measured();
        RuleFor(meter => meter.BulkDensity).Measured();
        RuleFor(meter => meter.FittedElement!).SetValidator(new FittedElementValidator());
        RuleFor(meter => meter.ValueInForce).Measured();
        RuleFor(meter => meter.ValueInForce!).SetValidator(new ReferenceOfTestValidator());
        RuleFor(meter => meter.StartValue).Measured();
        RuleFor(meter => meter.StartValue!).SetValidator(new ReferenceOfTestValidator());
        RuleFor(meter => meter.SpeedLimits!).SetValidator(new RotationLimitsValidator());
        RuleFor(meter => meter.Container!).SetValidator(new ContainerOfPlanValidator());
        RuleFor(meter => meter.Repeatability).Measured(new(0.01, 30, "%"));
        RuleFor(meter => meter.PocketsPerRevolution).Whole(1, 10_000);
        RuleFor(meter => meter).Custom((meter, context) =>
        {
            if (meter.ValueInForce is null && meter.StartValue is null)
                context.Report(nameof(meter.ValueInForce), ErrorCode.MemberMissing, "Add the value in force, or a startValue where none is in force yet.");
            if (meter.ValueInForce is not null && meter.StartValue is not null)
                context.Report(nameof(meter.StartValue), ErrorCode.SettingsAtOdds, "A start value is for a meter that has no value in force. Give one of the two.");
        });
    }
}

internal sealed class ContainerOfPlanValidator : RequestValidator<ContainerOfPlan>
{
    public ContainerOfPlanValidator()
    {
        RuleFor(container => container.Volume).Measured(new(0, 10, "m3", ExcludesLeast: true));
        RuleFor(container => container.Tare).Needed();
        RuleFor(container => container.Tare).Measured(new(0, 10, "t"));
        RuleFor(container => container.Fill).Measured(new(1, 100, "%"));
    }
}

internal sealed class SpeedRangeValidator : RequestValidator<SpeedRange>
{
    public SpeedRangeValidator()
    {
        RuleFor(range => range.Minimum).Needed();
        RuleFor(range => range.Minimum).Measured();
        RuleFor(range => range.Maximum).Needed();
        RuleFor(range => range.Maximum).Measured();
        RuleFor(range => range).Custom((range, context) =>
        {
            if (Rules.Canonical(range.Minimum) > Rules.Canonical(range.Maximum))
                context.Report(nameof(range.Minimum), ErrorCode.SettingsAtOdds, "The minimum is above the maximum. Check whether they were swapped and whether both units are right.");
        });
    }
}

internal sealed class RotationLimitsValidator : RequestValidator<RotationLimits>
{
    public RotationLimitsValidator()
    {
        RuleFor(limits => limits.Minimum).Measured(new(0, 10_000, "rpm"));
        RuleFor(limits => limits.Maximum).Measured();
        RuleFor(limits => limits).Custom((limits, context) =>
        {
            if (Rules.Canonical(limits.Minimum) >= Rules.Canonical(limits.Maximum))
                context.Report(nameof(limits.Minimum), ErrorCode.SettingsAtOdds, "The minimum has to be below the maximum. Check whether they were swapped and whether both units are right.");
        });
    }
}

internal sealed class DisturbedPointOfPlanValidator : RequestValidator<DisturbedPointOfPlan>
{
    public DisturbedPointOfPlanValidator()
    {
        RuleFor(point => point.Name).Needed();
        RuleFor(point => point.Name).Text(Rules.LongestName);
        RuleFor(point => point.ToOpen).Text(500);
        RuleFor(point => point.ToRestore).Text(500);
    }
}
