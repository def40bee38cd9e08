using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Nutrients;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.Nutrients;

/// <summary>What all members that name a nutrient have in common.</summary>
internal static class NutrientRules
{
    /// <summary>Two numbers that differ by less come from one number and its rounding in another unit.</summary>
    public const double JustBelow = 1 - 1e-9;

    // One gram per hectare, in kg/m2.
    private const double LeastAmount = 1e-7;

    /// <summary>Shares that an analysis can have: one for each nutrient.</summary>
    public const int MostShares = 4;

    public static IReadOnlyList<string> Words { get; } = [.. NutrientForm.All.Select(form => form.Symbol)];

    /// <summary>An amount is zero or at least a gram per hectare; what is between is a slip of the unit, since nothing meters it.</summary>
    public static void ZeroOrMeasurable<T>(MassPerAreaQuantity? amount, string member, ValidationContext<T> context)
    {
        if (Rules.Canonical(amount) is > 0 and < LeastAmount * JustBelow)
            context.Report(
                member,
                ErrorCodes.NumberOutOfRange,
                "This is less than a gram per hectare, or 0.001 kg/ha. Check the number and its unit."
            );
    }

    /// <summary>Every nutrient once, in whatever form.</summary>
    public static void EachOnce<T, TItem>(
        IReadOnlyList<TItem?>? items,
        Func<TItem, string?> word,
        string path,
        string what,
        ValidationContext<T> context
    )
        where TItem : class
    {
        var seen = new HashSet<Nutrient>();
        for (var i = 0; i < items?.Count; i++)
        {
            if (items[i] is { } item && NutrientForm.Find(word(item)) is { } form && !seen.Add(form.Nutrient))
                context.Report(
                    $"{path}[{i}].Nutrient",
                    SharedCodes.SettingsAtOdds,
                    $"There is a {what} of {form.Nutrient.ToString().ToLowerInvariant()} before this one. Give one {what} for each nutrient, in one form."
                );
        }
    }

    /// <summary>The rules of an analysis that look at all its shares.</summary>
    public static void CheckAnalysis<T>(IReadOnlyList<ShareOfNutrient?>? shares, string path, ValidationContext<T> context)
    {
        EachOnce(shares, share => share.Nutrient, path, "share", context);
        if (shares is not { Count: > 0 })
            return;
        var read = shares.Select(one => (Form: NutrientForm.Find(one?.Nutrient), Share: Rules.Canonical(one?.Share))).ToArray();
        if (read.Any(one => one.Form is null || one.Share is not >= 0 || !double.IsFinite(one.Share.Value)))
            return;
        if (read.All(one => one.Share == 0))
            context.Report(
                path,
                ErrorCodes.NumberOutOfRange,
                "Every share is zero, so this product supplies nothing. Give at least one share above zero, or leave the product out."
            );
        if (NutrientShare.IsMoreThanAWhole(read.Select(one => new NutrientShare(one.Form!, one.Share!.Value))))
            context.Report(
                path,
                ErrorCodes.NumberOutOfRange,
                "N, P2O5, K2O and S add up to more than 100 % of the product. Check the numbers, and whether P and K are stated as the element or as P2O5 and K2O."
            );
    }
}
