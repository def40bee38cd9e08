namespace CalibrationApi.Engine.Quantities;

/// <summary>Plants or seeds per area.</summary>
/// <param name="PerSquareMetre">Value in 1/m2; finite.</param>
public readonly record struct CountPerArea(double PerSquareMetre) : IQuantity<CountPerArea>
{
    /// <summary>Value in 1/m2.</summary>
    public double PerSquareMetre { get; } = Finite.Require(PerSquareMetre);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.CountPerArea;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => PerSquareMetre;

    /// <inheritdoc/>
    public static CountPerArea FromCanonical(double value) => new(value);
}
