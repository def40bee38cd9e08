namespace CalibrationApi.Engine.Quantities;

/// <summary>The mass of a product per bulk volume.</summary>
/// <param name="KilogramsPerCubicMetre">Value in kg/m3; finite.</param>
public readonly record struct BulkDensity(double KilogramsPerCubicMetre) : IQuantity<BulkDensity>
{
    /// <summary>Value in kg/m3.</summary>
    public double KilogramsPerCubicMetre { get; } = Finite.Require(KilogramsPerCubicMetre);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.BulkDensity;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => KilogramsPerCubicMetre;

    /// <inheritdoc/>
    public static BulkDensity FromCanonical(double value) => new(value);
}
