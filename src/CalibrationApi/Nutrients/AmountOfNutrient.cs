using CalibrationApi.Http;
using CalibrationApi.Quantities;
using FluentValidation;

namespace CalibrationApi.Nutrients;

/// <summary>An amount of a nutrient per area.</summary>
public class AmountOfNutrient
{
    /// <summary>The nutrient in the form that the amount is stated in: N, P2O5, P, K2O, K, S, SO4-S, SO3 or SO4.</summary>
    public string? Nutrient { get; init; }

    /// <summary>Amount per area.</summary>
    public MassPerAreaQuantity? Amount { get; init; }
}

internal abstract class AmountValidator<T> : RequestValidator<T>
    where T : AmountOfNutrient
{
    protected AmountValidator()
    {
        RuleFor(one => one.Nutrient).Needed();
        RuleFor(one => one.Nutrient).Word(NutrientRules.Words);
        RuleFor(one => one.Amount).Needed();
        RuleFor(one => one.Amount).Measured(NutrientRules.Amounts);
        RuleFor(one => one).Custom((one, context) => NutrientRules.ZeroOrMeasurable(one.Amount, nameof(one.Amount), context));
    }
}

internal sealed class AmountOfNutrientValidator : AmountValidator<AmountOfNutrient>;
