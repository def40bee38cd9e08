using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.Nutrients;

/// <summary>A nutrient as a share of a product.</summary>
[CheckedBy(typeof(ShareOfNutrientValidator))]
public sealed class ShareOfNutrient
{
    /// <summary>The nutrient in the form that the share is stated in.</summary>
    [Needed, Word(typeof(NutrientRules), nameof(NutrientRules.Words))]
    public string? Nutrient { get; init; }

    /// <summary>Its share of the mass of the product.</summary>
    // Pure sulfur is 250 % of SO3.
    [Needed, Measured(0, 250, "%")]
    public RatioQuantity? Share { get; init; }

    /// <summary>An analysis that passed validation, as the engine takes it.</summary>
    internal static NutrientShare[] Read(IReadOnlyList<ShareOfNutrient?> analysis) =>
        [.. analysis.Select(one => new NutrientShare(NutrientForm.Find(one!.Nutrient)!, one.Share!.Canonical()))];
}

internal sealed class ShareOfNutrientValidator : AbstractValidator<ShareOfNutrient>
{
    // Rates from smaller shares would be beyond any machine.
    private const double LeastShare = 0.0001;

    public ShareOfNutrientValidator()
    {
        RuleFor(share => share)
            .Custom(
                (share, context) =>
                {
                    if (Rules.Canonical(share.Share) is > 0 and < LeastShare * NutrientRules.JustBelow)
                        context.Report(
                            nameof(share.Share),
                            ErrorCodes.NumberOutOfRange,
                            "A share is zero, or at least 0.01 %. Leave traces out."
                        );
                }
            );
    }
}
