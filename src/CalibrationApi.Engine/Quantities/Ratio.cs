namespace CalibrationApi.Engine.Quantities;

/// <summary>A ratio of like quantities: a share, a relative deviation, a relative uncertainty.</summary>
/// <param name="Fraction">Value in as a fraction (0.05 is 5 %); finite.</param>
public readonly record struct Ratio(double Fraction) : IQuantity<Ratio>
{
    /// <summary>Value in as a fraction (0.05 is 5 %).</summary>
    public double Fraction { get; } = Finite.Require(Fraction);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.Ratio;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => Fraction;

    /// <inheritdoc/>
    public static Ratio FromCanonical(double value) => new(value);
}
