using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Adoptions;

/// <summary>A number typed into a controller, and what is known that it can be compared with.</summary>
public sealed record TypedValue
{
    /// <summary>The mass per revolution behind the number k, above 0.</summary>
    public required MassPerRevolution Value { get; init; }

    /// <summary>The number with its unit, as it was typed.</summary>
    public required string InWords { get; init; }

    /// <summary>
    /// The mass per revolution of one step of the controller's last digit, kg per revolution, &gt;= 0; 0 when the digits are not known.
    /// </summary>
    public double Step { get; init; }

    /// <summary>What the test behind it found; null for a number stated by hand.</summary>
    public TestBehindValue? Test { get; init; }

    /// <summary>The value in force before; null when there was none.</summary>
    public MassPerRevolution? Before { get; init; }

    /// <summary>The last test that measured it; asked only where nothing was in force before. Null when there was none.</summary>
    public MeasuredBefore? LastMeasured { get; init; }

    /// <summary>What the element can hold; null when it is not known.</summary>
    public ElementContent? Content { get; init; }

    /// <summary>Bulk density of the product; null when it is not known.</summary>
    public Uncertain<BulkDensity>? Density { get; init; }

    /// <summary>What is in force for other products on the same meter, element and setting.</summary>
    public IReadOnlyList<ValueOfOtherProduct> OtherProducts { get; init; } = [];
}

/// <summary>A value that was measured and never adopted.</summary>
/// <param name="Value">Mass per revolution, above 0.</param>
/// <param name="ExpandedUncertainty">Its expanded uncertainty U, kg per revolution, &gt;= 0.</param>
/// <param name="Called">What the test is called in a sentence, for example "the test of 2026-04-18".</param>
public sealed record MeasuredBefore(MassPerRevolution Value, double ExpandedUncertainty, string Called);

/// <summary>What is in force for another product.</summary>
/// <param name="Name">What the owner calls the product.</param>
/// <param name="Value">Its mass per revolution.</param>
/// <param name="Density">Its bulk density; null when it is not known.</param>
public sealed record ValueOfOtherProduct(string Name, Uncertain<MassPerRevolution> Value, Uncertain<BulkDensity>? Density);

/// <summary>What the test behind a typed number found.</summary>
/// <param name="Measured">Mass per revolution measured.</param>
/// <param name="ExpandedUncertainty">Its expanded uncertainty U, kg per revolution, &gt;= 0.</param>
/// <param name="Enter">The mass per revolution that follows from the number it gave to type in; null when it gave none.</param>
/// <param name="Kept">The value in force that it said to keep; null when it said otherwise.</param>
public sealed record TestBehindValue(
    MassPerRevolution Measured,
    double ExpandedUncertainty,
    MassPerRevolution? Enter = null,
    MassPerRevolution? Kept = null
);
