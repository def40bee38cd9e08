using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Records.Describing;

namespace CalibrationApi.Records.Scales;

/// <summary>A scale. Its span error comes from its checks, which are evidence of their own.</summary>
public class ScaleRequest : DescribedRequest
{
    /// <summary>Smallest step of the display.</summary>
    [Needed, Measured(0, 100, "kg", ExcludesLeast = true)]
    public MassQuantity? Division { get; init; }

    /// <summary>Class on the data plate of a verified scale, as OIML R 76 names it: I, II, III or IIII.</summary>
    [Word(typeof(AccuracyClass))]
    public string? AccuracyClass { get; init; }

    /// <summary>
    /// Verification interval e of the data plate. Default the division: common practice, as on most verified scales (OIML R 76).
    /// </summary>
    [Measured(0, 100, "kg", ExcludesLeast = true)]
    public MassQuantity? VerificationInterval { get; init; }

    /// <summary>Limit of error stated by the maker or owner; goes before the class.</summary>
    [Measured(0, 1000, "kg", ExcludesLeast = true)]
    public MassQuantity? StatedAccuracy { get; init; }

    /// <summary>Largest load, container included.</summary>
    [Measured]
    public MassQuantity? Capacity { get; init; }

    /// <summary>Days after which a check is overdue. Default 365: judgement, no published source.</summary>
    [Whole(1, 3660)]
    public int? DaysBetweenChecks { get; init; }

    /// <summary>As a question states it.</summary>
    /// <param name="knownError">The error that a check found; null when none did.</param>
    internal ScaleOfTest OfTest(KnownScaleErrorOfTest? knownError = null) =>
        new()
        {
            Division = Division,
            AccuracyClass = AccuracyClass,
            VerificationInterval = VerificationInterval,
            StatedAccuracy = StatedAccuracy,
            Capacity = Capacity,
            KnownError = knownError,
        };
}

/// <summary>A scale as stored.</summary>
public sealed class ScaleAnswer : ScaleRequest, IRecordAnswer
{
    /// <inheritdoc/>
    public new required string Id { get; init; }

    /// <inheritdoc/>
    public required long Revision { get; init; }

    /// <inheritdoc/>
    public required DateTimeOffset CreatedAt { get; init; }

    /// <inheritdoc/>
    public required DateTimeOffset UpdatedAt { get; init; }
}
