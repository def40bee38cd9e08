namespace CalibrationApi.Engine.Quantities;

/// <summary>A time span.</summary>
/// <param name="Seconds">Value in seconds; finite.</param>
public readonly record struct Duration(double Seconds) : IQuantity<Duration>
{
    /// <summary>Value in seconds.</summary>
    public double Seconds { get; } = Finite.Require(Seconds);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.Time;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => Seconds;

    /// <inheritdoc/>
    public static Duration FromCanonical(double value) => new(value);
}
