namespace CalibrationApi.Plumbing.Http;

/// <summary>The words of the query parameter <c>units</c>.</summary>
internal static class UnitsWord
{
    public const string AsAsked = "as-asked";
    public const string Metric = "metric";
    public const string UnitedStates = "us";

    public static IReadOnlyList<string> All { get; } = [AsAsked, Metric, UnitedStates];
}
