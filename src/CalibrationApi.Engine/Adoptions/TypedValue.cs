using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.VolumeChecks;

namespace CalibrationApi.Engine.Adoptions;

/// <summary>A number typed into a controller, and what is known that it can be compared with.</summary>
public sealed record TypedValue
{
    /// <summary>The mass per revolution behind the number k, above 0.</summary>
    public required MassPerRevolution Value { get; init; }

    /// <summary>The number with its unit, as it was typed.</summary>
    public required string InWords { get; init; }

    /// <summary>The mass per revolution of one step of the controller's last digit, kg per revolution, &gt;= 0; 0 when the digits are not known.</summary>
    public double Step { get; init; }

    /// <summary>What the test behind it found; null for a number stated by hand.</summary>
    public TestBehindValue? Test { get; init; }

    /// <summary>The value in force before; null when there was none.</summary>
    public MassPerRevolution? Before { get; init; }

    /// <summary>What the element can hold; null when it is not known.</summary>
    public ElementContent? Content { get; init; }
}

/// <summary>What the test behind a typed number found.</summary>
/// <param name="Measured">Mass per revolution measured.</param>
/// <param name="ExpandedUncertainty">Its expanded uncertainty U, kg per revolution, &gt;= 0.</param>
/// <param name="Enter">The mass per revolution that follows from the number it gave to type in; null when it gave none.</param>
/// <param name="Kept">The value in force that it said to keep; null when it said otherwise.</param>
public sealed record TestBehindValue(MassPerRevolution Measured, double ExpandedUncertainty, MassPerRevolution? Enter = null, MassPerRevolution? Kept = null);
