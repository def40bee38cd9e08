using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Http;
using FluentValidation;

namespace CalibrationApi.Calculations.MeterSpeeds;

/// <summary>Rules of an air stream.</summary>
internal sealed class FanOfMachineValidator : RequestValidator<FanOfMachine>
{
    private const int MostProducts = 20;

    public FanOfMachineValidator()
    {
        RuleFor(fan => fan.FanSpeed).Measured();
        RuleFor(fan => fan.AirFlow).Measured();
        RuleFor(fan => fan.Products).Needed();
        RuleFor(fan => fan.Products).Items(1, MostProducts);
        RuleForEach(fan => fan.Products!).SetValidator(new ProductInAirValidator()!);
    }
}

internal sealed class ProductInAirValidator : RequestValidator<ProductInAir>
{
    public ProductInAirValidator()
    {
        RuleFor(product => product.Name).Needed();
        RuleFor(product => product.Name).Text(Rules.LongestName);
        RuleFor(product => product.Rates).Items(1, 100);
        RuleForEach(product => product.Rates).Measured(new(0, 100_000, "kg/ha"));
        RuleFor(product => product.CoveredWidth).Measured(new(0.01, 200, "m"));
        RuleFor(product => product.FanSpeedLimits!).SetValidator(new RotationLimitsValidator());
        RuleFor(product => product.AirFlowLimits!).SetValidator(new AirFlowLimitsValidator());
        RuleFor(product => product).Custom((product, context) =>
        {
            if (product.Rates is { Count: > 0 } rates && rates.All(rate => Rules.Canonical(rate) == 0))
                context.Report(nameof(product.Rates), ErrorCode.NumberOutOfRange, "Every rate is zero, so the air does not carry this product. Give at least one rate above zero, or leave the product out.");
        });
    }
}

internal sealed class AirFlowLimitsValidator : RequestValidator<AirFlowLimits>
{
    public AirFlowLimitsValidator()
    {
        RuleFor(limits => limits.Minimum).Measured();
        RuleFor(limits => limits.Maximum).Measured();
        RuleFor(limits => limits).Custom((limits, context) =>
        {
            if (Rules.Canonical(limits.Minimum) >= Rules.Canonical(limits.Maximum))
                context.Report(nameof(limits.Minimum), ErrorCode.SettingsAtOdds, "The minimum has to be below the maximum. Check whether they were swapped and whether both units are right.");
        });
    }
}

internal sealed class StopsInFieldValidator : RequestValidator<StopsInField>
{
    public StopsInFieldValidator()
    {
        RuleFor(stops => stops.TurnTime).Measured(new(0, 1, "h", ExcludesLeast: true));
        RuleFor(stops => stops.RunLength).Measured(new(1, 100_000, "m"));
        RuleFor(stops => stops.RefillTime).Measured();
        RuleFor(stops => stops.AreaPerFill).Measured(new(0.001, 100_000, "ha"));
        RuleFor(stops => stops).Custom((stops, context) =>
        {
            if (stops.TurnTime is null && stops.RefillTime is null)
                context.Report(nameof(stops.TurnTime), ErrorCode.MemberMissing, "Add turnTime with runLength, or refillTime with areaPerFill, or both.");
            if (stops.TurnTime is null != stops.RunLength is null)
                context.Report(stops.TurnTime is null ? nameof(stops.TurnTime) : nameof(stops.RunLength), ErrorCode.MemberMissing, "A turnTime goes with a runLength: every run ends in a turn. Add this one.");
            if (stops.RefillTime is null != stops.AreaPerFill is null)
                context.Report(stops.RefillTime is null ? nameof(stops.RefillTime) : nameof(stops.AreaPerFill), ErrorCode.MemberMissing, "A refillTime goes with an areaPerFill: every fill ends in a refill. Add this one.");
        });
    }
}
