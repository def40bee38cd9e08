namespace CalibrationApi.Engine.Quantities;

/// <summary>Seeds per mass.</summary>
/// <param name="PerKilogram">Value in 1/kg; finite.</param>
public readonly record struct CountPerMass(double PerKilogram) : IQuantity<CountPerMass>
{
    /// <summary>Value in 1/kg.</summary>
    public double PerKilogram { get; } = Finite.Require(PerKilogram);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.CountPerMass;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => PerKilogram;

    /// <inheritdoc/>
    public static CountPerMass FromCanonical(double value) => new(value);
}
