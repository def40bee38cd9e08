using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>What came from other records and what was noticed about them, as it is kept beside a test.</summary>
internal sealed class CatchTestContext
{
    public required UsedHistory UsedHistory { get; init; }

    public required IReadOnlyList<FindingAnswer> Findings { get; init; }
}
