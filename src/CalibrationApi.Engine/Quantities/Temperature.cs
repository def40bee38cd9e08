namespace CalibrationApi.Engine.Quantities;

/// <summary>A temperature.</summary>
/// <param name="Kelvin">Value in kelvin; finite.</param>
public readonly record struct Temperature(double Kelvin) : IQuantity<Temperature>
{
    /// <summary>Value in kelvin.</summary>
    public double Kelvin { get; } = Finite.Require(Kelvin);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.Temperature;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => Kelvin;

    /// <inheritdoc/>
    public static Temperature FromCanonical(double value) => new(value);
}
