namespace CalibrationApi.Engine.Quantities;

/// <summary>The mass of a kernel, stated for a thousand of them.</summary>
/// <param name="KilogramsPerKernel">Value in kg per kernel; finite.</param>
public readonly record struct MassPerThousand(double KilogramsPerKernel) : IQuantity<MassPerThousand>
{
    /// <summary>Value in kg per kernel.</summary>
    public double KilogramsPerKernel { get; } = Finite.Require(KilogramsPerKernel);

    /// <inheritdoc/>
    public static Dimension Of => Dimension.MassPerThousand;

    /// <inheritdoc/>
    public Dimension Dimension => Of;

    /// <inheritdoc/>
    public double Canonical => KilogramsPerKernel;

    /// <inheritdoc/>
    public static MassPerThousand FromCanonical(double value) => new(value);
}
