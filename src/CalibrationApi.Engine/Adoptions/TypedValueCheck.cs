using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.VolumeChecks;

namespace CalibrationApi.Engine.Adoptions;

/// <summary>Looks at a number typed into a controller before it is believed.</summary>
public static class TypedValueCheck
{
    /// <summary>Change of the value in force from which a number that no test stands behind needs a reason; as a test needs a second one from there.</summary>
    public static DefaultValue LargestUntestedChange { get; } = new(new Ratio(0.10), "twice the usual tolerance; judgement, no published source");

    // How near the logarithm of a ratio has to be to that of a factor to be called by its name.
    private const double NearFactor = 0.03;

    private static readonly (double Factor, string Code)[] Factors =
    [
        (2, RefusalCode.TypedTwiceOrHalf),
        (1 / 0.45359237, RefusalCode.TypedInOtherUnit),
    ];

    /// <summary>Every code that an objection can have.</summary>
    public static IReadOnlyList<string> Codes { get; } =
    [
        RefusalCode.TypedDecimalSlip,
        RefusalCode.TypedTwiceOrHalf,
        RefusalCode.TypedInOtherUnit,
        RefusalCode.TypedOffTest,
        RefusalCode.TypedOffValueInForce,
        RefusalCode.TypedMoreThanElementHolds,
    ];

    /// <summary>What speaks against a typed number, the gravest objection first; empty when nothing does.</summary>
    /// <param name="typed">The number and what it can be compared with.</param>
    /// <remarks>
    /// <para>
    /// With a test: accepted is a + b with a anywhere between the measured value and the one given to type in, and
    /// |b| &lt;= U + step / 2; also the value that the test said to keep, within step / 2. Without a test: a change against the value
    /// before of less than 10 %. Outside of that the ratio chooses the code: a power of ten, 2, or a pound per kilogram when
    /// |ln(ratio) - ln(factor)| &lt;= 0.03, otherwise just "off". In any case <see cref="ElementContent.Judge"/>, the number taken as exact.
    /// </para>
    /// <para>Source: our own rules; the limits are judgement. Accuracy: exact comparisons, TypedValueCheckTests.</para>
    /// </remarks>
    public static IReadOnlyList<Refusal> ObjectionsTo(TypedValue typed)
    {
        var objections = new List<Refusal>();
        if (typed.Content is { } content && content.Judge(typed.Value, 0) is { Plausibility: Plausibility.Impossible, Fill: var fill })
            objections.Add(Objection(RefusalCode.TypedMoreThanElementHolds, $"{typed.InWords} {content.TooMuch(fill)} {ElementContent.CheckIt}"));
        if (typed.Test is { } test)
        {
            if (!Accepts(test, typed))
                objections.Add(Off(typed, test.Enter ?? test.Kept ?? test.Measured, RefusalCode.TypedOffTest, "what its test gave"));
        }
        else if (typed.Before is { } before && !Threshold.IsBelow(Math.Abs(Ratio(typed, before) - 1), LargestUntestedChange.Value.Canonical))
        {
            objections.Add(Off(typed, before, RefusalCode.TypedOffValueInForce, "the value in force before, and no test stands behind it"));
        }
        return objections;
    }

    /// <summary>What to keep in sight about a number that was typed in although something spoke against it.</summary>
    /// <param name="code">The objection that was answered, one of <see cref="Codes"/>.</param>
    /// <param name="reason">The answer of the person who typed it in.</param>
    public static Finding Despite(string code, string reason)
    {
        FormattableString detail = $"This number was typed in although {Objected(code)}. The reason given: {reason}";
        return code == RefusalCode.TypedMoreThanElementHolds
            ? Finding.Stop(FindingCode.AdoptedDespite, detail)
            : Finding.Warning(FindingCode.AdoptedDespite, detail);
    }

    private static bool Accepts(TestBehindValue test, TypedValue typed)
    {
        var value = typed.Value.KilogramsPerRevolution;
        var measured = test.Measured.KilogramsPerRevolution;
        var given = test.Enter?.KilogramsPerRevolution ?? measured;
        var room = test.ExpandedUncertainty + typed.Step / 2;
        if (!Threshold.IsBelow(value, Math.Min(measured, given) - room) && !Threshold.IsAbove(value, Math.Max(measured, given) + room))
            return true;
        return test.Kept is { } kept
            && !Threshold.IsBelow(value, kept.KilogramsPerRevolution - typed.Step / 2)
            && !Threshold.IsAbove(value, kept.KilogramsPerRevolution + typed.Step / 2);
    }

    private static Refusal Off(TypedValue typed, MassPerRevolution compared, string otherwise, string what)
    {
        var ratio = Ratio(typed, compared);
        var size = Math.Abs(Math.Log(ratio));
        var tens = (int)Math.Round(size / Math.Log(10));
        if (tens > 0 && Math.Abs(size - tens * Math.Log(10)) <= NearFactor)
            return Objection(RefusalCode.TypedDecimalSlip, $"{typed.InWords} is {Against(ratio)} {compared}, {what}. The decimal point may have slipped.");
        foreach (var (factor, code) in Factors)
        {
            if (Math.Abs(size - Math.Log(factor)) <= NearFactor)
                return Objection(code, $"{typed.InWords} is {Against(ratio)} {compared}, {what}. {Suspicion(code)}");
        }

        return Objection(otherwise, $"{typed.InWords} is {Against(ratio)} {compared}, {what}. Digits may have been swapped, or it belongs to another product or element.");
    }

    private static string Suspicion(string code) => code == RefusalCode.TypedInOtherUnit
        ? "That is what pounds taken as kilograms look like, or kilograms taken as pounds."
        : "That is what a count doubled or halved looks like.";

    private static FormattableString Against(double ratio) => ratio switch
    {
        >= 1.5 => $"{ratio:0.##} times",
        <= 1 / 1.5 => $"{ratio:0.#####} times",
        >= 1 => $"{new Ratio(ratio - 1):F1} above",
        _ => $"{new Ratio(1 - ratio):F1} below",
    };

    private static string Objected(string code) => code switch
    {
        RefusalCode.TypedDecimalSlip => "it is ten times too large or too small, or a hundred or thousand times, as after a slip of the decimal point",
        RefusalCode.TypedTwiceOrHalf => "it is twice or half of what was known",
        RefusalCode.TypedInOtherUnit => "it differs from what was known as pounds do from kilograms",
        RefusalCode.TypedOffTest => "it is further from its test than the uncertainty explains",
        RefusalCode.TypedOffValueInForce => "it is far from the value in force before and no test stands behind it",
        RefusalCode.TypedMoreThanElementHolds => "it is more than the metering element can hold",
        _ => throw new ArgumentOutOfRangeException(nameof(code), code, "No objection has this code."),
    };

    private static Refusal Objection(string code, FormattableString detail) =>
        new(code, "typedIn/value", $"{detail} Look at the controller and type the number again. If it is right, say why in 'despite' with the code {code}.");

    private static double Ratio(TypedValue typed, MassPerRevolution compared) => typed.Value.KilogramsPerRevolution / compared.KilogramsPerRevolution;
}
