using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.LikelyMistakes;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>What a verdict on a catch test is decided by.</summary>
public sealed record CatchTestFacts
{
    /// <summary>The value of the test.</summary>
    public required MassPerRevolutionEstimate Estimate { get; init; }

    /// <summary>How its catches agree.</summary>
    public required CatchAgreement Agreement { get; init; }

    /// <summary>The comparison with a value in force or a start value; null without either.</summary>
    public required ChangeAgainstReference? Change { get; init; }

    /// <summary>How far the test lies from what was expected of it; null without a value in force or a start value.</summary>
    public required ExpectedChange? Expected { get; init; }

    /// <summary>How an earlier test bears this one out; null without one.</summary>
    public required SecondTest? SecondTest { get; init; }

    /// <summary>The mistakes that would explain the test.</summary>
    public required LikelyMistakesResult Mistakes { get; init; }

    /// <summary>Something about the test cannot be (<see cref="PhysicalLimits"/>).</summary>
    public required bool IsImpossible { get; init; }

    /// <summary>The scale failed its last check before the test.</summary>
    public required bool ScaleFailed { get; init; }

    /// <summary>What the catches that were left out say.</summary>
    public required ExcludedCatches Excluded { get; init; }

    /// <summary>Catches that count.</summary>
    public required int Counted { get; init; }

    /// <summary>Mean of their known random variances, relative.</summary>
    public required double MeanVariance { get; init; }

    /// <summary>Tolerance, wanted precision, second-test change and coverage in use.</summary>
    public required CatchTestSettings Limits { get; init; }
}
