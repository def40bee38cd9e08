using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.PublishedSeedRowLimits;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;

namespace CalibrationApi.Calculations.SeedRowLimits;

/// <summary>The rule between the width over which an opener spreads seed and the distance between rows.</summary>
internal static class SeedSpread
{
    /// <summary>Reports a spread that is wider than the rows are apart.</summary>
    /// <param name="rowSpacing">Distance between rows.</param>
    /// <param name="seedRowWidth">Width over which seed is spread.</param>
    /// <param name="member">The member that gives it.</param>
    /// <param name="context">Where it is reported.</param>
    public static void Check<T>(LengthQuantity? rowSpacing, LengthQuantity? seedRowWidth, string member, ValidationContext<T> context)
    {
        if (
            Rules.Canonical(rowSpacing) is { } row
            && Rules.Canonical(seedRowWidth) is { } width
            && double.IsFinite(row)
            && double.IsFinite(width)
            && SeedbedUtilisation.IsWiderThanRow(new Length(width), new Length(row))
        )
            context.Report(
                member,
                SharedCodes.SettingsAtOdds,
                "Seed cannot be spread wider than the rows are apart. Check both widths and their units."
            );
    }
}
