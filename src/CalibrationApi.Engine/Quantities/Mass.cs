namespace CalibrationApi.Engine.Quantities;

/// <summary>A mass.</summary>
/// <param name="Kilograms">Value in kilograms; finite.</param>
public readonly record struct Mass(double Kilograms) : IQuantity<Mass>
{
    /// <summary>Value in kilograms.</summary>
    public double Kilograms { get; } = Finite.Require(Kilograms);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.Mass;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => Kilograms;

    /// <inheritdoc/>
    public static Mass FromCanonical(double value) => new(value);
}
