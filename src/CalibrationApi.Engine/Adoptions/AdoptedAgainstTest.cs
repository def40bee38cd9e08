using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.History;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Adoptions;

/// <summary>An adopted number beside the test that it rests on.</summary>
/// <param name="Adopted">The mass per revolution behind the number, above 0.</param>
/// <param name="InWords">The number with its unit, as it was typed in.</param>
/// <param name="Test">What the test found.</param>
public sealed record AdoptedAgainstTest(MassPerRevolution Adopted, string InWords, TestBehindValue Test)
{
    // The test gave its number in one unit, and it may have been typed in with another.
    private const double SameNumber = 1e-9;

    /// <summary>The number with its unit that the test gave to type in; null when it gave none.</summary>
    public string? GivenInWords { get; init; }

    /// <summary>The very number that the test gave was typed in; null when unit or form is another, so that only its value tells.</summary>
    public bool? IsNumberGiven { get; init; }

    /// <summary>What the test said to do, where it did not say to adopt; null when it did.</summary>
    public string? OtherVerdict { get; init; }

    /// <summary>The scale behind it failed its first check after the test with this error, relative; null when it did not.</summary>
    public double? ErrorOfFailedCheck { get; init; }

    /// <summary>What is noticed.</summary>
    /// <remarks>
    /// <para>Formula: the number is that of the test when it is the one given, or its mass per revolution that behind it within 1e-9;
    /// where none was given, when |k - m| &lt;= U.</para>
    /// <para>Range: values above 0.</para>
    /// <para>Source: judgement, no published source.</para>
    /// <para>Accuracy: on either side of each bound (AdoptedAgainstTestTests).</para>
    /// </remarks>
    public IReadOnlyList<Finding> Findings() => [.. All()];

    /// <summary>What is noticed when the test behind an adopted number was superseded.</summary>
    /// <param name="reason">What was wrong with it.</param>
    /// <param name="isOfSameSeries">The test in its place is of the same meter, element, setting and product.</param>
    public static Finding Superseded(string reason, bool isOfSameSeries)
    {
        var remedy = isOfSameSeries
            ? "adopt the value of the test in its place"
            : "test again, because the test in its place is of another meter, element, setting or product";
        return Finding.Stop(
            HistoryCodes.BasisSuperseded,
            $"The test behind this value was wrong ({reason}) and has been superseded. The controller still uses this number: {remedy}."
        );
    }

    private IEnumerable<Finding> All()
    {
        if (Otherwise() is { } otherwise)
            yield return Finding.Warning(TypedValueCodes.AdoptedOtherwise, otherwise);
        if (ErrorOfFailedCheck is { } error)
            yield return Finding.Warning(
                HistoryCodes.ScaleCheckFailedLater,
                $"The scale behind this value failed its first check after the test: it was {new Ratio(error):F2} off. The value may be off by as much; test again with a good scale."
            );
        if (OtherVerdict is { } verdict)
            yield return Finding.Warning(TypedValueCodes.AdoptedOtherwise, $"The test behind this value said '{verdict}', not adopt.");
    }

    private Sentence? Otherwise()
    {
        var adopted = Adopted.KilogramsPerRevolution;
        if (Test.Enter is { } given)
            return IsNumberGiven ?? Math.Abs(adopted - given.KilogramsPerRevolution) <= SameNumber * adopted
                ? null
                : (Sentence)$"The number typed in, {InWords}, is not the {GivenInWords!} that the test gave.";
        return Math.Abs(adopted - Test.Measured.KilogramsPerRevolution) <= Test.ExpandedUncertainty
            ? null
            : (Sentence)$"The number typed in, {InWords}, lies outside what the test measured, {Test.Measured}.";
    }
}
