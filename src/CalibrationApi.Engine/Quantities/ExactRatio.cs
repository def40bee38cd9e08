using System.Numerics;

namespace CalibrationApi.Engine.Quantities;

/// <summary>A positive rational number kept as its exact integer constituents, in lowest terms.</summary>
/// <remarks>
/// Unit factors are defined exactly (a pound is 0.453 592 37 kg by definition); keeping numerator and
/// denominator lets a reader repeat our sums and keeps a factor free of accumulated rounding.
/// Both parts stay below 2^53, so that they survive as JSON numbers in every client.
/// </remarks>
public readonly record struct ExactRatio
{
    /// <summary>Reduces <paramref name="numerator"/> / <paramref name="denominator"/> to lowest terms.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A part is not positive.</exception>
    public ExactRatio(BigInteger numerator, BigInteger denominator)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(numerator, BigInteger.Zero);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(denominator, BigInteger.Zero);
        var divisor = BigInteger.GreatestCommonDivisor(numerator, denominator);
        Numerator = (long)(numerator / divisor);
        Denominator = (long)(denominator / divisor);
        Value = (double)Numerator / Denominator;
    }

    /// <summary>Numerator in lowest terms.</summary>
    public long Numerator { get; }

    /// <summary>Denominator in lowest terms.</summary>
    public long Denominator { get; }

    /// <summary>The quotient, correctly rounded to double because both parts are exact doubles.</summary>
    public double Value { get; }

    /// <summary>The whole number <paramref name="value"/> as a ratio.</summary>
    public static implicit operator ExactRatio(long value) => new(value, 1);

    /// <summary>Exact product.</summary>
    public static ExactRatio operator *(ExactRatio left, ExactRatio right) =>
        new((BigInteger)left.Numerator * right.Numerator, (BigInteger)left.Denominator * right.Denominator);

    /// <summary>Exact quotient.</summary>
    public static ExactRatio operator /(ExactRatio left, ExactRatio right) =>
        new((BigInteger)left.Numerator * right.Denominator, (BigInteger)left.Denominator * right.Numerator);

    /// <inheritdoc/>
    public override string ToString() => $"{Numerator}/{Denominator}";
}
