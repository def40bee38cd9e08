namespace CalibrationApi.Engine.Quantities;

/// <summary>A number of revolutions, whole or not.</summary>
/// <param name="Count">Value in revolutions; finite.</param>
public readonly record struct Revolutions(double Count) : IQuantity<Revolutions>
{
    /// <summary>Value in revolutions.</summary>
    public double Count { get; } = Finite.Require(Count);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.Revolutions;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => Count;

    /// <inheritdoc/>
    public static Revolutions FromCanonical(double value) => new(value);
}
