using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Catches;

/// <summary>
/// Another test of the same meter, element, setting, product and lot, set up apart from the one at hand since the value in force was
/// adopted.
/// </summary>
/// <remarks>
/// Set up apart means that nothing but the machine is common to both: the container was weighed again, the points counted, element and
/// product looked at, the meter primed again. A recorded tare that served both tests is common to them and would hide in both.
/// </remarks>
public sealed record EarlierTest
{
    /// <summary>Mass per revolution that it found.</summary>
    public required MassPerRevolution Value { get; init; }

    /// <summary>Catches that counted in it, at least 1.</summary>
    public required int Catches { get; init; }

    /// <summary>
    /// Relative standard uncertainty that the scatter of its catches gave its value; null when not known, then the repeatability of
    /// the test at hand over its number of catches is taken.
    /// </summary>
    public double? Scatter { get; init; }

    /// <summary>
    /// Degrees of freedom of that scatter; null takes those of the repeatability of the test at hand, and one for each catch but the first.
    /// </summary>
    public double? DegreesOfFreedom { get; init; }

    /// <summary>
    /// Relative standard uncertainty of its other random parts that are known without doubt: weighing, counting, a shared tare.
    /// </summary>
    public double KnownUncertainty { get; init; }

    /// <summary>Relative standard uncertainty of the span of its scale; null takes that of the test at hand.</summary>
    public double? Span { get; init; }

    /// <summary>
    /// True when another scale weighed it, or the same one after another check: then no span error cancels. Null when not stated, which is
    /// taken as the same scale with the same check.
    /// </summary>
    public bool? FromAnotherScale { get; init; }

    /// <summary>What the owner or a record calls it; null when it has no name.</summary>
    public string? Name { get; init; }

    /// <summary>When it was made, as an ISO 8601 instant or day, by which it is called; null when not stated.</summary>
    public string? OccurredAt { get; init; }
}
