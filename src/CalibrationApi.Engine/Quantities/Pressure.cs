namespace CalibrationApi.Engine.Quantities;

/// <summary>A pressure above that of the air around.</summary>
/// <param name="Pascals">Value in pascals; finite.</param>
public readonly record struct Pressure(double Pascals) : IQuantity<Pressure>
{
    /// <summary>Value in pascals.</summary>
    public double Pascals { get; } = Finite.Require(Pascals);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.Pressure;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => Pascals;

    /// <inheritdoc/>
    public static Pressure FromCanonical(double value) => new(value);
}
