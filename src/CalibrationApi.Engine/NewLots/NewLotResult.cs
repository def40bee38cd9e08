using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.NewLots;

/// <summary>When to make a catch test after a change of lots.</summary>
public enum LotVerdict
{
    /// <summary>Before sowing the new lot.</summary>
    TestNow,

    /// <summary>When the tank is filled the next time.</summary>
    TestAtNextFill,

    /// <summary>Not because of this lot.</summary>
    NoTestNeeded,
}

/// <summary>What another lot changes.</summary>
public sealed record NewLotResult
{
    /// <summary>One or two sentences that a tired person understands.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>When to test.</summary>
    public required LotVerdict Verdict { get; init; }

    /// <summary>Why.</summary>
    public required IReadOnlyList<Finding> Reasons { get; init; }

    /// <summary>The mass per revolution expected of the new lot; the start value of a catch plan.</summary>
    public required LotPrediction Prediction { get; init; }

    /// <summary>Probability that the value in force is within the tolerance of the truth.</summary>
    public required double ProbabilityOfValueInForce { get; init; }

    /// <summary>Probability that the predicted value is, were it typed in.</summary>
    public required double ProbabilityOfPrediction { get; init; }

    /// <summary>The rate for the new lot; null when nothing says how many seeds there were.</summary>
    public LotRate? Rate { get; init; }

    /// <summary>What is sown when the rate is set anew and the value in force stays; null without a rate.</summary>
    public LotEffect? IfValueStays { get; init; }

    /// <summary>What is sown when neither is touched; null without a rate and kernel masses.</summary>
    public LotEffect? IfNothingIsChanged { get; init; }

    /// <summary>Values used that the asker did not state, with origin.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What the engine noticed beyond the verdict.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>What can hurt a person here.</summary>
    public required IReadOnlyList<Caution> Cautions { get; init; }
}
