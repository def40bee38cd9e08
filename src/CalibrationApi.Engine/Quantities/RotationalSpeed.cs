namespace CalibrationApi.Engine.Quantities;

/// <summary>The speed of a meter shaft.</summary>
/// <param name="RevolutionsPerSecond">Value in revolutions per second; finite.</param>
public readonly record struct RotationalSpeed(double RevolutionsPerSecond) : IQuantity<RotationalSpeed>
{
    /// <summary>Value in revolutions per second.</summary>
    public double RevolutionsPerSecond { get; } = Finite.Require(RevolutionsPerSecond);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.Rotation;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => RevolutionsPerSecond;

    /// <inheritdoc/>
    public static RotationalSpeed FromCanonical(double value) => new(value);
}
