using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Quantities;
using FluentValidation;

namespace CalibrationApi.Plumbing.Validation;

/// <summary>Rules of a range that has a minimum and a maximum.</summary>
internal static class RangeRules
{
    private const string Minimum = nameof(Minimum);

    /// <summary>The minimum lies below the maximum.</summary>
    public static void CheckBelow<T>(Quantity? minimum, Quantity? maximum, ValidationContext<T> context)
    {
        if (Rules.Canonical(minimum) >= Rules.Canonical(maximum))
            context.Report(
                Minimum,
                SharedCodes.SettingsAtOdds,
                "The minimum has to be below the maximum. Check whether they were swapped and whether both units are right."
            );
    }

    /// <summary>The minimum does not lie above the maximum.</summary>
    public static void CheckNotAbove<T>(Quantity? minimum, Quantity? maximum, ValidationContext<T> context)
    {
        if (Rules.Canonical(minimum) > Rules.Canonical(maximum))
            context.Report(
                Minimum,
                SharedCodes.SettingsAtOdds,
                "The minimum is above the maximum. Check whether they were swapped and whether both units are right."
            );
    }
}
