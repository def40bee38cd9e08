using CalibrationApi.Storage.History;

namespace CalibrationApi.Storage.CatchTests;

/// <summary>The test behind an adopted value.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Series">The series it belongs to.</param>
/// <param name="Scale">Id of the scale.</param>
/// <param name="Verdict">Verdict.</param>
/// <param name="OccurredAt">When it was made.</param>
/// <param name="Measured">The mass per revolution of its answer, JSON.</param>
/// <param name="Enter">What its answer said to enter, JSON; null when it could not say.</param>
/// <param name="Conditions">Its conditions as entered, JSON; null when none were.</param>
public sealed record BasisRecord(
    string Id,
    Series Series,
    string Scale,
    string Verdict,
    DateTimeOffset OccurredAt,
    string Measured,
    string? Enter,
    string? Conditions
);
