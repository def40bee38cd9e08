namespace CalibrationApi.Client.Models;

/// <summary>What one of a unit is in SI units: a ratio of whole numbers and, for temperatures, what is added.</summary>
internal readonly record struct UnitFactor(string Dimension, double Numerator, double Denominator, double Offset);

/// <summary>Converts between units with the factors of the service.</summary>
internal static class Conversion
{
    public static double Of<TUnit>(double? value, TUnit? unit, string to)
        where TUnit : struct, Enum => Of(value, unit is { } known ? Word.Write(known) : null, to);

    public static double Of(double? value, string? unit, string to)
    {
        if (value is not { } number || unit is null)
            throw new InvalidOperationException("A quantity without number or unit cannot be converted. Set both.");
        if (!UnitFactors.All.TryGetValue(unit, out var given))
            throw new NotSupportedException($"This version of the client does not know '{unit}'. Update the package.");
        if (!UnitFactors.All.TryGetValue(to, out var wanted) || wanted.Dimension != given.Dimension)
            throw new ArgumentException(
                $"'{unit}' cannot be converted to '{to}'. Use one of: {string.Join(", ", UnitFactors.All.Where(one => one.Value.Dimension == given.Dimension).Select(one => one.Key))}.",
                nameof(to)
            );
        if (unit == to)
            return number;
        var inSi = number * given.Numerator / given.Denominator + given.Offset;
        return (inSi - wanted.Offset) * wanted.Denominator / wanted.Numerator;
    }
}
