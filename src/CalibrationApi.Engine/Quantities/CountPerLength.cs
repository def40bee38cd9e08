namespace CalibrationApi.Engine.Quantities;

/// <summary>Plants or seeds per length of row.</summary>
/// <param name="PerMetre">Value in 1/m; finite.</param>
public readonly record struct CountPerLength(double PerMetre) : IQuantity<CountPerLength>
{
    /// <summary>Value in 1/m.</summary>
    public double PerMetre { get; } = Finite.Require(PerMetre);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.CountPerLength;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => PerMetre;

    /// <inheritdoc/>
    public static CountPerLength FromCanonical(double value) => new(value);
}
