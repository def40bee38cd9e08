using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.VolumeChecks;

/// <summary>The mass per revolution that volume and density let expect, and how a value compares with it.</summary>
public sealed record VolumeCheckResult
{
    /// <summary>One or two sentences that a tired person understands.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>What it is good for.</summary>
    public Usability Verdict => Judgement.Of(Findings);

    /// <summary>Expected mass per revolution, its median with its interval.</summary>
    public required LogInterval<MassPerRevolution> Expected { get; init; }

    /// <summary>Fill efficiency used, its median with its interval.</summary>
    public required LogInterval<Ratio> FillEfficiency { get; init; }

    /// <summary>Parts of the standard deviation of the logarithm by their source.</summary>
    public required IReadOnlyList<(string Source, double Relative)> Parts { get; init; }

    /// <summary>How the checked value compares; null without one.</summary>
    public CheckedValue? Checked { get; init; }

    /// <summary>Values used that the caller did not state, with origin.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What the engine noticed.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}

/// <summary>A log-normal value.</summary>
/// <param name="Median">Median.</param>
/// <param name="Lower">Lower end of the coverage interval.</param>
/// <param name="Upper">Upper end of the coverage interval.</param>
/// <param name="Spread">Standard deviation of the natural logarithm; for small values the relative standard uncertainty.</param>
public sealed record LogInterval<T>(T Median, T Lower, T Upper, double Spread)
    where T : struct, IQuantity<T>;

/// <summary>A mass per revolution beside the expected one.</summary>
/// <param name="Ratio">The value divided by the expected median.</param>
/// <param name="Deviations">ln(ratio) divided by the standard deviation of both together; 0 when they agree, null when neither has any
/// uncertainty.</param>
/// <param name="FillEfficiency">Fill efficiency that the value implies, k / (rho V), with its interval.</param>
public sealed record CheckedValue(double Ratio, double? Deviations, LogInterval<Ratio> FillEfficiency);
