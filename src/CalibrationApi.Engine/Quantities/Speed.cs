namespace CalibrationApi.Engine.Quantities;

/// <summary>A ground speed.</summary>
/// <param name="MetresPerSecond">Value in m/s; finite.</param>
public readonly record struct Speed(double MetresPerSecond) : IQuantity<Speed>
{
    /// <summary>Value in m/s.</summary>
    public double MetresPerSecond { get; } = Finite.Require(MetresPerSecond);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.Speed;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => MetresPerSecond;

    /// <inheritdoc/>
    public static Speed FromCanonical(double value) => new(value);
}
