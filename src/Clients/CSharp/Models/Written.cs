using System.Globalization;

namespace CalibrationApi.Client.Models;

/// <summary>A number and its unit as text.</summary>
internal static class Written
{
    public static string As(double? value, string? unit) =>
        string.Join(' ', new[] { value?.ToString(CultureInfo.InvariantCulture), unit }.Where(part => part is not null));

    public static string As<TUnit>(double? value, TUnit? unit)
        where TUnit : struct, Enum => As(value, unit is { } known ? Word.Write(known) : null);
}
