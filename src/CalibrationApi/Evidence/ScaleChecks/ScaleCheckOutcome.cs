using CalibrationApi.Engine.Weighing;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Evidence.ScaleChecks;

/// <summary>What a check found, as it is kept.</summary>
internal sealed class ScaleCheckOutcome
{
    /// <summary>The outcome in one sentence that can be shown as it is.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>Passed or failed.</summary>
    public required string Verdict { get; init; }

    /// <summary>Span error: indicated minus true over true. Later tests on this scale are corrected for it.</summary>
    public required RatioQuantity Error { get; init; }

    /// <summary>Standard uncertainty of that error.</summary>
    public required RatioQuantity StandardUncertainty { get; init; }

    /// <summary>The deviation that comes nearest to its limit or exceeds it most.</summary>
    public required MassQuantity LargestDeviation { get; init; }

    /// <summary>The limit at that load.</summary>
    public required MassQuantity Limit { get; init; }

    /// <summary>Where the limit comes from.</summary>
    public required string LimitOrigin { get; init; }

    public static ScaleCheckOutcome Of(ScaleCheckResult result, AnswerUnits units) =>
        new()
        {
            Headline = units.Text(result.Headline),
            HeadlineParts = units.Parts(result.Headline),
            Verdict = Words.Of(result.Verdict),
            Error = AnswerUnits.Percent(result.Error),
            StandardUncertainty = AnswerUnits.Percent(result.StandardUncertainty),
            LargestDeviation = units.Mass(result.LargestDeviation),
            Limit = units.Mass(result.Limit),
            LimitOrigin = result.LimitOrigin,
        };
}
