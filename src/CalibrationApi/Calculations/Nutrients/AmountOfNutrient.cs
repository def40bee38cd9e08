using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.Nutrients;

/// <summary>An amount of a nutrient per area.</summary>
[CheckedBy(typeof(AmountOfNutrientValidator))]
public class AmountOfNutrient
{
    /// <summary>The nutrient in the form that the amount is stated in: N, P2O5, P, K2O, K, S, SO4-S, SO3 or SO4.</summary>
    [Needed, Word(typeof(NutrientRules), nameof(NutrientRules.Words))]
    public string? Nutrient { get; init; }

    /// <summary>Amount per area.</summary>
    [Needed, Measured(0, 10_000, "kg/ha")]
    public MassPerAreaQuantity? Amount { get; init; }
}

internal sealed class AmountOfNutrientValidator : AbstractValidator<AmountOfNutrient>
{
    public AmountOfNutrientValidator() =>
        RuleFor(one => one).Custom((one, context) => NutrientRules.ZeroOrMeasurable(one.Amount, nameof(one.Amount), context));
}
