namespace CalibrationApi.Engine.Quantities;

/// <summary>The mass a meter delivers per revolution.</summary>
/// <param name="KilogramsPerRevolution">Value in kg per revolution; finite.</param>
public readonly record struct MassPerRevolution(double KilogramsPerRevolution) : IQuantity<MassPerRevolution>
{
    /// <summary>Value in kg per revolution.</summary>
    public double KilogramsPerRevolution { get; } = Finite.Require(KilogramsPerRevolution);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.MassPerRevolution;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => KilogramsPerRevolution;

    /// <inheritdoc/>
    public static MassPerRevolution FromCanonical(double value) => new(value);
}
