using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Engine.ReferenceValues;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Quantities;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>The evaluation of a catch test.</summary>
public sealed class CatchTestAnswer
{
    /// <summary>The outcome in one or two sentences that can be shown as they are.</summary>
    public required string Headline { get; init; }

    /// <summary>What the headline is made of, for showing it in another language; its code is the verdict.</summary>
    public SentenceParts? HeadlineParts { get; init; }

    /// <summary>
    /// What to do: <c>investigate</c> (something is wrong with the test), <c>repeat</c> (not sure enough yet), <c>keep</c> (the value in
    /// force is good enough) or <c>adopt</c> (type in the new value).
    /// </summary>
    [KnownWords(typeof(Verdict))]
    public required string Verdict { get; init; }

    /// <summary>
    /// How many more catches a repeat takes; absent for other verdicts and when no number of catches would help. Where precision is
    /// missing, so many are enough with the probability precisionProbability.
    /// </summary>
    public int? MoreCatches { get; init; }

    /// <summary>The relative expanded uncertainty to expect after moreCatches, where precision is what is missing.</summary>
    public RatioQuantity? ExpectedPrecision { get; init; }

    /// <summary>Why.</summary>
    [SentCodes(typeof(CatchTestCodes), nameof(CatchTestCodes.Reasons))]
    public required IReadOnlyList<ReasonAnswer> Reasons { get; init; }

    /// <summary>The mass per revolution found, with its uncertainty.</summary>
    public required MeasuredMassPerRevolution MassPerRevolution { get; init; }

    /// <summary>Total mass over total revolutions: can be redone on paper.</summary>
    public required MassPerRevolutionQuantity TotalMassOverTotalRevolutions { get; init; }

    /// <summary>Plain mean of the ratios of the catches: can be redone on paper.</summary>
    public required MassPerRevolutionQuantity MeanOfRatios { get; init; }

    /// <summary>Where the uncertainty comes from: standard uncertainties, relative; their squares add up.</summary>
    public required IReadOnlyList<UncertaintyPart> UncertaintyParts { get; init; }

    /// <summary>Every catch in the order given.</summary>
    public required IReadOnlyList<CatchAnswer> Catches { get; init; }

    /// <summary>How the catches that count agree.</summary>
    public required AgreementAnswer Agreement { get; init; }

    /// <summary>Change against the value in force or the start value, with its interval; absent without either.</summary>
    public MeasuredRatio? Change { get; init; }

    /// <summary>What the change is measured from: <c>value-in-force</c> or <c>start-value</c>.</summary>
    [KnownWords(typeof(ReferenceKind))]
    public string? ChangeFrom { get; init; }

    /// <summary>Probability that the true mass per revolution is within the tolerance of the value compared with.</summary>
    public double? ProbabilityWithinTolerance { get; init; }

    /// <summary>Old and new value combined; offered when the uncertainty of the old one is known and no change was detected.</summary>
    public MeasuredMassPerRevolution? CombinedWithPrevious { get; init; }

    /// <summary>
    /// How the earlierTest of the question bears this one out; absent without one, or without a value to compare both with. An earlier test
    /// is combined with this one only when it is later than the last adoption.
    /// </summary>
    public SecondTestAnswer? SecondTest { get; init; }

    /// <summary>
    /// Mistakes that would explain the test, the most probable first, each with its one check. Those under a probability of 10 % are left
    /// out, except where the change is so large that a second test is asked for: then everything that could explain it is listed, however
    /// improbable. Of a smaller change, what fits it exactly is listed where it is not negligible; the verdict never changes by that. Empty
    /// when none stands out.
    /// </summary>
    [SentCodes(typeof(MistakeCodes), nameof(MistakeCodes.All))]
    public required IReadOnlyList<LikelyMistakeAnswer> LikelyMistakes { get; init; }

    /// <summary>
    /// The mass per revolution that serves best from now on, with the verdict adopt: what the test found, what it and an earlier test found
    /// together, or between it and a value in force whose relativeUncertainty is known. What the test alone found stays in
    /// massPerRevolution.
    /// </summary>
    public MassPerRevolutionQuantity? ValueToUse { get; init; }

    /// <summary>What to type in for valueToUse; given with the verdict adopt when the controller's form is known.</summary>
    public EntryAnswer? Enter { get; init; }

    /// <summary>The measured value in the controller's form; given with the verdicts keep and adopt when that form is known.</summary>
    public EntryAnswer? MeasuredEntry { get; init; }

    /// <summary>
    /// The value in force in the controller's form, with what its rounding makes of it; given with the verdicts keep and adopt when that
    /// form is known.
    /// </summary>
    public EntryAnswer? ValueInForceEntry { get; init; }

    /// <summary>What happens if the value in force stays although the meter delivers something else.</summary>
    public EffectAnswer? EffectIfValueInForceStays { get; init; }

    /// <summary>Values used that the question did not state.</summary>
    public required IReadOnlyList<AssumptionAnswer> Assumptions { get; init; }

    /// <summary>What was noticed beyond the verdict.</summary>
    [SentCodes(typeof(CatchTestCodes), nameof(CatchTestCodes.Findings))]
    public required IReadOnlyList<FindingAnswer> Findings { get; init; }

    /// <summary>Version of the engine that answered.</summary>
    public required string EngineVersion { get; init; }
}

/// <summary>A reason for a verdict.</summary>
public sealed class ReasonAnswer
{
    /// <summary>Stable code. Which ones can come stands at the list that holds it; <c>GET /v1/codes</c> explains each.</summary>
    public required string Code { get; init; }

    /// <summary>A sentence that can be shown as it is.</summary>
    public required string Detail { get; init; }

    /// <summary>What the sentence is made of, for showing it in another language.</summary>
    public SentenceParts? Parts { get; init; }
}

/// <summary>One part of the uncertainty.</summary>
public sealed class UncertaintyPart
{
    /// <summary>
    /// Where it comes from: <c>catches</c> (scatter, weighing, counting), <c>scale</c> (span, common to all), <c>shared-tare</c> or
    /// <c>points-not-caught</c>.
    /// </summary>
    [KnownWords("catches", "scale", "shared-tare", "points-not-caught")]
    public required string Source { get; init; }

    /// <summary>Standard uncertainty, relative.</summary>
    public required RatioQuantity Relative { get; init; }
}

/// <summary>One catch as evaluated.</summary>
public sealed class CatchAnswer
{
    /// <summary>Net mass as the scale showed it.</summary>
    public required MassQuantity Net { get; init; }

    /// <summary>
    /// Mass metered: corrected for the known error of the scale and scaled to all points; absent when it equals the net mass.
    /// </summary>
    public MassQuantity? Metered { get; init; }

    /// <summary>Revolutions of the meter.</summary>
    public required RevolutionsQuantity Revolutions { get; init; }

    /// <summary>Mass per revolution of this catch alone.</summary>
    public required MassPerRevolutionQuantity MassPerRevolution { get; init; }

    /// <summary>Why the sender left it out; absent when it counts.</summary>
    public string? ExcludedBecause { get; init; }
}

/// <summary>How catches agree.</summary>
public sealed class AgreementAnswer
{
    /// <summary>Standard deviation of the mass per revolution of the catches, relative; zero for one catch.</summary>
    public required RatioQuantity Spread { get; init; }

    /// <summary>Sum of squared deviations over the variances expected of them.</summary>
    public required double Q { get; init; }

    /// <summary>How often chance alone gives at least this Q.</summary>
    public required double QProbability { get; init; }

    /// <summary>No test speaks against the catches; all tests together err in 5 of 100 honest cases.</summary>
    public required bool Agree { get; init; }

    /// <summary>Grubbs' statistic of the farthest catch, for information from six catches on.</summary>
    public double? Grubbs { get; init; }
}

/// <summary>An earlier test beside this one.</summary>
public sealed class SecondTestAnswer
{
    /// <summary>What the earlier test is called.</summary>
    public string? Test { get; init; }

    /// <summary>When it was made, as the question said it.</summary>
    public string? OccurredAt { get; init; }

    /// <summary>The mass per revolution that it found.</summary>
    public required MassPerRevolutionQuantity MassPerRevolution { get; init; }

    /// <summary>This test over the earlier one, less 1.</summary>
    public required RatioQuantity Difference { get; init; }

    /// <summary>The largest difference, on the natural logarithm, of two honest tests like these, at the coverage probability.</summary>
    public required RatioQuantity LargestHonestDifference { get; init; }

    /// <summary>The two differ by no more than honest tests do.</summary>
    public required bool Agrees { get; init; }

    /// <summary>They agree, and each alone shows a change on the same side: the change is confirmed.</summary>
    public required bool Confirms { get; init; }

    /// <summary>Both values together; what is adopted when the change is confirmed.</summary>
    public required MeasuredMassPerRevolution Combined { get; init; }
}

/// <summary>A mistake that would explain a test.</summary>
public sealed class LikelyMistakeAnswer
{
    /// <summary>Stable code; a code that has been checked can be sent back in ruledOutMistakes.</summary>
    public required string Code { get; init; }

    /// <summary>JSON pointer to the catch in the question; absent when it would be in the whole test.</summary>
    public string? Catch { get; init; }

    /// <summary>Probability that it happened, after the masses were looked at. Rests on prior probabilities that are judgement.</summary>
    public required double Probability { get; init; }

    /// <summary>How many times better it explains the masses than an ordinary change of the meter does; 1000000000 at most.</summary>
    public required double BayesFactor { get; init; }

    /// <summary>The masses alone do not tell it from the others of this list that are marked so too: do the check of each.</summary>
    public required bool CannotBeToldApart { get; init; }

    /// <summary>What was seen and how the mistake explains it.</summary>
    public required string Detail { get; init; }

    /// <summary>What the sentence is made of, for showing it in another language.</summary>
    public SentenceParts? Parts { get; init; }

    /// <summary>The one thing to look at.</summary>
    public required string Check { get; init; }
}

/// <summary>A number for the controller.</summary>
public sealed class EntryAnswer
{
    /// <summary>The form in which the controller takes it.</summary>
    [KnownWords(typeof(ControllerForm))]
    public required string Form { get; init; }

    /// <summary>Revolutions that the number stands for, in the form mass-per-revolutions.</summary>
    public int? Revolutions { get; init; }

    /// <summary>The number to type in, already rounded to the controller's decimals.</summary>
    public required double Value { get; init; }

    /// <summary>Its unit.</summary>
    public required string Unit { get; init; }

    /// <summary>Relative error that the rounding causes.</summary>
    public required RatioQuantity RoundingError { get; init; }

    /// <summary>The mass per revolution that the controller then uses: the value in force once typed in.</summary>
    public required MassPerRevolutionQuantity ResultingMassPerRevolution { get; init; }
}

/// <summary>The effect of a wrong value.</summary>
public sealed class EffectAnswer
{
    /// <summary>The rate that is really applied.</summary>
    public required MassPerAreaQuantity AppliedRate { get; init; }

    /// <summary>Product too much over the stated area; negative when too little.</summary>
    public MassQuantity? MassOverArea { get; init; }

    /// <summary>Money for that product; negative when the crop gets too little.</summary>
    public Money? TotalCost { get; init; }
}
