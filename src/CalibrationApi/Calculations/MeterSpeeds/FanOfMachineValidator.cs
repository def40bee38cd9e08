using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.MeterSpeeds;

internal sealed class ProductInAirValidator : AbstractValidator<ProductInAir>
{
    public ProductInAirValidator()
    {
        RuleFor(product => product)
            .Custom(
                (product, context) =>
                {
                    if (product.Rates is { Count: > 0 } rates && rates.All(rate => Rules.Canonical(rate) == 0))
                        context.Report(
                            nameof(product.Rates),
                            ErrorCodes.NumberOutOfRange,
                            "Every rate is zero, so the air does not carry this product. Give at least one rate above zero, or leave the product out."
                        );
                }
            );
    }
}

internal sealed class AirFlowLimitsValidator : AbstractValidator<AirFlowLimits>
{
    public AirFlowLimitsValidator() =>
        RuleFor(limits => limits).Custom((limits, context) => RangeRules.CheckBelow(limits.Minimum, limits.Maximum, context));
}

internal sealed class StopsInFieldValidator : AbstractValidator<StopsInField>
{
    public StopsInFieldValidator()
    {
        RuleFor(stops => stops)
            .Custom(
                (stops, context) =>
                {
                    if (stops.TurnTime is null && stops.RefillTime is null)
                        context.Report(
                            nameof(stops.TurnTime),
                            ErrorCodes.MemberMissing,
                            "Add turnTime with runLength, or refillTime with areaPerFill, or both."
                        );
                    if (stops.TurnTime is null != stops.RunLength is null)
                        context.Report(
                            stops.TurnTime is null ? nameof(stops.TurnTime) : nameof(stops.RunLength),
                            ErrorCodes.MemberMissing,
                            "A turnTime goes with a runLength: every run ends in a turn. Add this one."
                        );
                    if (stops.RefillTime is null != stops.AreaPerFill is null)
                        context.Report(
                            stops.RefillTime is null ? nameof(stops.RefillTime) : nameof(stops.AreaPerFill),
                            ErrorCodes.MemberMissing,
                            "A refillTime goes with an areaPerFill: every fill ends in a refill. Add this one."
                        );
                }
            );
    }
}
