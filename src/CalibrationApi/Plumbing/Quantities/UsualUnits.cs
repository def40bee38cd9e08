using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Plumbing.Quantities;

/// <summary>Units for what a question does not touch, after the first of its units that decides between hectares and acres.</summary>
internal static class UsualUnits
{
    private static readonly string[] ByTheAcre = ["lb/ac", "/ft2", "/ac", "ac", "ft2", "/ft", "/lb", "lb/rev", "oz/rev"];

    private static readonly Unit?[] OfTheAcre = [.. ((string[])["lb/ac", "/ft2", "ac", "/ft", "/lb", "lb"]).Select(UnitTable.Get)];

    /// <summary>Those units, then the units of the question, which go before them.</summary>
    /// <param name="asked">Units of the question, the deciding ones first; absent ones are passed over.</param>
    public static Unit?[] With(params Unit?[] asked) =>
        asked.FirstOrDefault(unit => unit is not null) is { } first && ByTheAcre.Contains(first.Symbol) ? [.. OfTheAcre, .. asked] : asked;

    /// <summary>The unit in which a value is told that was typed in with another, which may be one of what a controller takes.</summary>
    public static Unit PerRevolution(string? entered) =>
        entered is not null && UnitTable.Find(entered) is { Dimension: Dimension.MassPerRevolution } unit ? unit : UnitTable.Get("kg/rev");
}
