using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;
using FluentValidation;

namespace CalibrationApi.Plumbing.Validation;

/// <summary>What rules of requests have in common.</summary>
internal static class Rules
{
    /// <summary>Characters of a name, of whatever it is the name.</summary>
    public const int LongestName = 100;

    /// <summary>Reports a fault of a rule that looks at several members.</summary>
    /// <param name="context">The context of the custom rule.</param>
    /// <param name="member">Path below the object under validation, in C# form such as <c>Catches[0].Gross</c>; empty for the object
    /// itself.</param>
    /// <param name="code">Stable code.</param>
    /// <param name="detail">What is wrong and what to do.</param>
    public static void Report<T>(this ValidationContext<T> context, string member, ErrorCode code, string detail) =>
        context.AddFailure(Faults.Failure(member, code, detail));

    /// <summary>The canonical value of a quantity whose unit fits; null otherwise, because its own rule reports that.</summary>
    public static double? Canonical(Quantity? quantity) =>
        quantity is { Value: { } value, Unit: { } symbol } && UnitTable.Find(symbol) is { } unit && unit.Dimension == quantity.Dimension
            ? unit.Canonical(value)
            : null;

    /// <summary>What is wrong with a unit where one of a dimension is needed; null when it fits.</summary>
    public static (ErrorCode Code, string Detail)? UnitFault(string? symbol, Dimension dimension)
    {
        if (symbol is not null && UnitTable.Find(symbol) is { } unit && unit.Dimension == dimension)
            return null;
        var units = string.Join(", ", UnitTable.Of(dimension).Select(one => one.Symbol));
        if (string.IsNullOrEmpty(symbol))
            return (ErrorCodes.UnitMissing, $"A number without a unit cannot be used. Add one of: {units}.");
        if (UnitTable.Find(symbol) is { } other)
            return (ErrorCodes.UnitWrongDimension, $"'{other.Symbol}' does not fit here. Use one of: {units}.");
        if (UnitTable.Meant(symbol) is { } meant)
            return meant.Dimension == dimension
                ? (ErrorCodes.UnitUnknown, $"Write {meant.Symbol}: '{Excerpt.Of(symbol, 40)}' is not how this unit is written here.")
                : (ErrorCodes.UnitWrongDimension, $"'{Excerpt.Of(symbol, 40)}' does not fit here. Use one of: {units}.");
        if (!UnitTable.Ambiguous.TryGetValue(symbol, out var meanings))
            return (ErrorCodes.UnitUnknown, $"'{Excerpt.Of(symbol, 40)}' is not a unit known here. Use one of: {units}.");
        return Array.Exists(meanings, one => UnitTable.Get(one).Dimension == dimension)
            ? (ErrorCodes.UnitAmbiguous, $"'{symbol}' can mean more than one unit. Write which: {string.Join(", ", meanings)}.")
            : (ErrorCodes.UnitWrongDimension, $"'{symbol}' does not fit here. Use one of: {units}.");
    }
}
