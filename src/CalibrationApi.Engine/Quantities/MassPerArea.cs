namespace CalibrationApi.Engine.Quantities;

/// <summary>An application rate by mass.</summary>
/// <param name="KilogramsPerSquareMetre">Value in kg/m2; finite.</param>
public readonly record struct MassPerArea(double KilogramsPerSquareMetre) : IQuantity<MassPerArea>
{
    /// <summary>Value in kg/m2.</summary>
    public double KilogramsPerSquareMetre { get; } = Finite.Require(KilogramsPerSquareMetre);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.MassPerArea;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => KilogramsPerSquareMetre;

    /// <inheritdoc/>
    public static MassPerArea FromCanonical(double value) => new(value);
}
