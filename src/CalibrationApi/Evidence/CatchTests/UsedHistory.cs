using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>What a stored test took from the history instead of defaults; absent members took nothing from it.</summary>
public sealed record UsedHistory
{
    /// <summary>Repeatability from earlier catches of the series (meter, element, setting and product).</summary>
    public UsedRepeatability? Repeatability { get; init; }

    /// <summary>Day-to-day component from earlier tests of the series.</summary>
    public UsedDayToDay? DayToDay { get; init; }

    /// <summary>The check of the scale whose error was corrected.</summary>
    public UsedScaleCheck? ScaleCheck { get; init; }

    /// <summary>The adopted value that the test was compared with.</summary>
    public UsedValueInForce? ValueInForce { get; init; }

    /// <summary>The last test of the series, which the test was compared with because nothing had been adopted.</summary>
    public UsedStartValue? StartValue { get; init; }

    /// <summary>
    /// The stored test of another set-up that was put beside this one; the evaluation says under secondTest whether it bears this one out.
    /// </summary>
    public UsedEarlierTest? EarlierTest { get; init; }
}

/// <summary>Repeatability from history.</summary>
public sealed class UsedRepeatability
{
    /// <summary>Standard deviation of one catch, relative.</summary>
    public required RatioQuantity Value { get; init; }

    /// <summary>Its degrees of freedom, at most 15.</summary>
    public required double DegreesOfFreedom { get; init; }

    /// <summary>Tests that it comes from.</summary>
    public required int Tests { get; init; }

    /// <summary>Catches that it comes from.</summary>
    public required int Catches { get; init; }
}

/// <summary>Day-to-day component from history.</summary>
public sealed class UsedDayToDay
{
    /// <summary>Standard deviation between days, relative, as counted; a finding says when the history shows more.</summary>
    public required RatioQuantity Value { get; init; }

    /// <summary>Tests that it comes from.</summary>
    public required int Tests { get; init; }
}

/// <summary>A scale check that was used.</summary>
public sealed class UsedScaleCheck
{
    /// <summary>Id of the check.</summary>
    public required string Check { get; init; }

    /// <summary>When it was made.</summary>
    public required string OccurredAt { get; init; }

    /// <summary>The span error that was corrected.</summary>
    public required RatioQuantity Error { get; init; }

    /// <summary>Its standard uncertainty.</summary>
    public required RatioQuantity StandardUncertainty { get; init; }

    /// <summary>True when the scale failed it; absent when it passed.</summary>
    public bool? Failed { get; init; }
}

/// <summary>A value in force that was used.</summary>
public sealed class UsedValueInForce
{
    /// <summary>Id of the adoption.</summary>
    public required string Adoption { get; init; }

    /// <summary>Since when it is in force.</summary>
    public required string Since { get; init; }

    /// <summary>The value.</summary>
    public required ReferenceOfTest Value { get; init; }
}

/// <summary>A value that was measured and never adopted, to compare with.</summary>
public sealed class UsedStartValue
{
    /// <summary>Id of the test that measured it.</summary>
    public required string Test { get; init; }

    /// <summary>When that was made.</summary>
    public required string OccurredAt { get; init; }

    /// <summary>The value.</summary>
    public required ReferenceOfTest Value { get; init; }
}

/// <summary>An earlier test that was used.</summary>
public sealed class UsedEarlierTest
{
    /// <summary>Id of the test.</summary>
    public required string Test { get; init; }

    /// <summary>When it was made.</summary>
    public required string OccurredAt { get; init; }
}
