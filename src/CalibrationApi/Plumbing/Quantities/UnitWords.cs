using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Plumbing.Quantities;

/// <summary>Units that are sent as a word of their own, without a number.</summary>
internal static class UnitWords
{
    public static IReadOnlyList<string> OfMass { get; } = Of(Dimension.Mass);

    public static IReadOnlyList<string> OfLength { get; } = Of(Dimension.Length);

    private static string[] Of(Dimension dimension) => [.. UnitTable.Of(dimension).Select(unit => unit.Symbol)];
}
