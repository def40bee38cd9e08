using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.ReferenceValues;

/// <summary>The mass per revolution that a test is compared with.</summary>
/// <param name="Value">kg per revolution, above 0; for a value in force, the number typed into the controller.</param>
/// <param name="Kind">What the value is.</param>
/// <param name="RelativeUncertainty">Its own standard uncertainty, relative; null when unknown, then the default of its kind is used
/// everywhere.</param>
/// <param name="FromAnotherScale">True when another scale, or the same one after another check, stands behind it: then no scale error
/// cancels. Null when not stated, which is taken as the same scale with the same check.</param>
public sealed record ReferenceValue(
    MassPerRevolution Value,
    ReferenceKind Kind,
    double? RelativeUncertainty = null,
    bool? FromAnotherScale = null
)
{
    /// <summary>An error of the scale behind it that was found only later; null when none is known.</summary>
    public LaterScaleError? ScaleErrorFoundLater { get; init; }

    /// <summary>
    /// For a start value: when the test was made that measured it, as an ISO 8601 instant, where it was measured and never adopted; null
    /// otherwise.
    /// </summary>
    public string? MeasuredAt { get; init; }

    /// <summary>It is in force, or a test measured it: not a mere prediction.</summary>
    internal bool IsMeasured => Kind == ReferenceKind.ValueInForce || MeasuredAt is not null;

    /// <summary>What it is called in a sentence.</summary>
    internal string Called =>
        Kind == ReferenceKind.ValueInForce ? "the value in force"
        : MeasuredAt is null ? "the start value"
        : "the last test";

    /// <summary>Standard uncertainty of a value in force that states none, relative.</summary>
    public static DefaultValue UncertaintyInForce { get; } =
        new(new Ratio(0.02), "default of a value in force: judgement, no published source");

    /// <summary>Standard uncertainty of a start value that states none, relative.</summary>
    public static DefaultValue UncertaintyOfStartValue { get; } =
        new(new Ratio(0.10), "a predicted start value may be 20 % off; judgement, no published source");

    /// <summary>The stated standard uncertainty, relative, or the default of its kind: the same one wherever the value is used.</summary>
    public double StandardUncertainty => RelativeUncertainty ?? UncertaintyOf(Kind).Value.Canonical;

    /// <summary>The default of a kind.</summary>
    public static DefaultValue UncertaintyOf(ReferenceKind kind) =>
        kind == ReferenceKind.StartValue ? UncertaintyOfStartValue : UncertaintyInForce;
}

/// <summary>What a test is compared with.</summary>
public enum ReferenceKind
{
    /// <summary>The value the controller uses now.</summary>
    ValueInForce,

    /// <summary>A predicted value to begin with, where none is in force yet.</summary>
    StartValue,
}
