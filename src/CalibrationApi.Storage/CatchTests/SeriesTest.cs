namespace CalibrationApi.Storage.CatchTests;

/// <summary>A test of a series as its statistics need it.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Value">kg per revolution.</param>
/// <param name="Random">Random standard uncertainty of that value, relative.</param>
/// <param name="Lot">Lot.</param>
/// <param name="Values">kg per revolution of each counted catch.</param>
/// <param name="Variances">Known random variance of each, relative.</param>
public sealed record SeriesTest(
    string Id,
    double Value,
    double Random,
    string? Lot,
    IReadOnlyList<double> Values,
    IReadOnlyList<double> Variances
);
