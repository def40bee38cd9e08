namespace CalibrationApi.Engine.History;

/// <summary>A past test of a series, as its statistics need it.</summary>
/// <param name="Value">Mass per revolution, kg per revolution, above 0.</param>
/// <param name="RandomUncertainty">Its random standard uncertainty, relative.</param>
/// <param name="Lot">Lot of the product; null when unknown. A change of lot is no change of the meter.</param>
/// <param name="Values">Mass per revolution of each counted catch.</param>
/// <param name="Variances">Known random variance of each, relative.</param>
public sealed record PastTest(
    double Value,
    double RandomUncertainty,
    string? Lot,
    IReadOnlyList<double> Values,
    IReadOnlyList<double> Variances
);
