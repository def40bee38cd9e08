namespace CalibrationApi.Engine.Quantities;

/// <summary>A finite number with a dimension, held in the SI unit of that dimension.</summary>
public interface IQuantity
{
    /// <summary>What it measures.</summary>
    Dimension Dimension { get; }

    /// <summary>The value in the SI unit of the dimension; always finite.</summary>
    double Canonical { get; }
}

/// <summary>A quantity type that can be made from a canonical value; lets a border convert any of them in one way.</summary>
public interface IQuantity<TSelf> : IQuantity
    where TSelf : struct, IQuantity<TSelf>
{
    /// <summary>The dimension of the type.</summary>
    static abstract Dimension Of { get; }

    /// <summary>Makes the quantity from a value in the SI unit of the dimension.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    static abstract TSelf FromCanonical(double value);
}

/// <summary>Guards that the quantity types share.</summary>
internal static class Finite
{
    public static double Require(double value)
    {
        if (!double.IsFinite(value))
            throw new ArgumentOutOfRangeException(nameof(value), value, "A quantity is a finite number.");
        return value;
    }
}
