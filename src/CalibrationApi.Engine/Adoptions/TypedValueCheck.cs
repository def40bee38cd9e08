using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Adoptions;

/// <summary>Looks at a number typed into a controller before it is believed.</summary>
public static class TypedValueCheck
{
    /// <summary>
    /// Change of the value in force from which a number that no test stands behind needs a reason; as a test needs a second one from there.
    /// </summary>
    public static DefaultValue LargestUntestedChange { get; } =
        new(new Ratio(0.10), "twice the usual tolerance; judgement, no published source");

    // How near the logarithm of a ratio has to be to that of a factor to be called by its name.
    private const double NearFactor = 0.03;

    private static readonly (double Factor, RefusalCode Code)[] Factors =
    [
        (2, TypedValueCodes.TypedTwiceOrHalf),
        (1 / 0.45359237, TypedValueCodes.TypedInOtherUnit),
    ];

    // How a sentence goes on that begins with "typed in although".
    private static readonly Dictionary<RefusalCode, string> Objected = new()
    {
        [TypedValueCodes.TypedDecimalSlip] =
            "it is ten times too large or too small, or a hundred or thousand times, as after a slip of the decimal point",
        [TypedValueCodes.TypedTwiceOrHalf] = "it is twice or half of what was known",
        [TypedValueCodes.TypedInOtherUnit] = "it differs from what was known as pounds do from kilograms",
        [TypedValueCodes.TypedOffTest] = "it is further from its test than the uncertainty explains",
        [TypedValueCodes.TypedOffValueInForce] = "it is far from the value in force before and no test stands behind it",
        [TypedValueCodes.TypedOffLastTest] = "it is far from what the last test measured and does not name that test",
        [TypedValueCodes.TypedMoreThanElementHolds] = "it is more than the metering element can hold",
    };

    /// <summary>Every code that an objection can have.</summary>
    public static IReadOnlyList<RefusalCode> Codes { get; } = [.. Objected.Keys];

    /// <summary>What speaks against a typed number, the gravest objection first; empty when nothing does.</summary>
    /// <param name="typed">The number and what it can be compared with.</param>
    /// <remarks>
    /// <para>Formula: with a test, accepted is a + b with a anywhere between the measured value and the one given to type in, and |b| &lt;=
    /// U + step / 2; also the value that the test said to keep, within step / 2. Without a test: a change against the value before of less
    /// than 10 %. Outside of that the ratio chooses the code: a power of ten, 2, or a pound per kilogram when |ln(ratio) - ln(factor)|
    /// &lt;= 0.03, otherwise just "off". Where nothing was in force, the last test is what the number is compared with: off beyond 10 % and
    /// its U. Where nothing was measured either, only a factor speaks against the number: against what other products let expect by their
    /// densities (<see cref="OtherProductsOfElement"/>) any of them, against displacement and density a power of ten; both 3 standard
    /// deviations or more away, and the factor met within 0.03 and one standard deviation. In any case <see cref="ElementContent.Judge"/>,
    /// the number taken as exact.</para>
    /// <para>Range: values above 0, steps and uncertainties at least 0; what is not known is not compared.</para>
    /// <para>Source: our own derivation; the limits are judgement.</para>
    /// <para>Accuracy: exact comparisons, the limits from both sides (TypedValueCheckTests).</para>
    /// </remarks>
    public static IReadOnlyList<Refusal> ObjectionsTo(TypedValue typed) =>
        [
            .. Against(typed)
                .Select(objection => new Refusal(
                    objection.Code,
                    "typedIn/value",
                    $"{objection.Detail} Look at the controller and type the number again. If it is right, say why in 'despite' with the code {objection.Code}."
                )),
        ];

    /// <summary>The same of a value in force that was stated beside a test, which is kept whatever speaks against it.</summary>
    /// <param name="stated">The value and what it can be compared with.</param>
    /// <remarks>
    /// <para>Formula: that of <see cref="ObjectionsTo"/> and <see cref="TypedValueAgainstProducts.FindingsOf"/>.</para>
    /// <para>Range: values above 0.</para>
    /// <para>Source: our own rules; the limits are judgement.</para>
    /// <para>Accuracy: exact comparisons (TypedValueAgainstProductsTests).</para>
    /// </remarks>
    public static IReadOnlyList<Finding> DoubtsAbout(TypedValue stated) =>
        [
            .. Against(stated)
                .Select(objection =>
                    Finding.Warning(
                        TypedValueCodes.StatedUnlikeRecords,
                        $"The value in force that was stated: {objection.Detail} Look at what the controller shows; the change is counted from the number stated."
                    )
                ),
            .. TypedValueAgainstProducts.FindingsOf(stated),
        ];

    private static List<Objection> Against(TypedValue typed)
    {
        var objections = new List<Objection>();
        if (typed.Content is { } content && content.Judge(typed.Value, 0) is { Plausibility: Plausibility.Impossible, Fill: var fill })
            objections.Add(
                new(TypedValueCodes.TypedMoreThanElementHolds, $"{typed.InWords} {content.TooMuch(fill)} {ElementContent.CheckIt}")
            );
        if (typed.Test is { } test)
        {
            if (!Accepts(test, typed))
                objections.Add(Off(typed, test.Enter ?? test.Kept ?? test.Measured, TypedValueCodes.TypedOffTest, "what its test gave"));
        }
        else if (typed.Before is { } before)
        {
            if (!Threshold.IsBelow(Math.Abs(Ratio(typed, before) - 1), LargestUntestedChange.Value.Canonical))
                objections.Add(
                    Off(typed, before, TypedValueCodes.TypedOffValueInForce, "the value in force before, and no test stands behind it")
                );
        }
        else if (FirstNumber(typed) is { } objection)
        {
            objections.Add(objection);
        }

        return objections;
    }

    /// <summary>What to keep in sight about a number that was typed in although something spoke against it.</summary>
    /// <param name="code">The objection that was answered, one of <see cref="Codes"/>.</param>
    /// <param name="reason">The answer of the person who typed it in.</param>
    public static Finding Despite(RefusalCode code, string reason)
    {
        Sentence detail = $"This number was typed in although {Objected[code]}. The reason given: {reason}";
        return code == TypedValueCodes.TypedMoreThanElementHolds
            ? Finding.Stop(TypedValueCodes.AdoptedDespite, detail)
            : Finding.Warning(TypedValueCodes.AdoptedDespite, detail);
    }

    // Nothing was in force before it: what was measured last, or what can be expected without any measurement.
    private static Objection? FirstNumber(TypedValue typed)
    {
        if (typed.LastMeasured is { } last)
        {
            var room = LargestUntestedChange.Value.Canonical + last.ExpandedUncertainty / last.Value.KilogramsPerRevolution;
            return Threshold.IsBelow(Math.Abs(Ratio(typed, last.Value) - 1), room)
                ? null
                : Off(
                    typed,
                    last.Value,
                    TypedValueCodes.TypedOffLastTest,
                    $"what {last.Called} measured, and this number does not name it"
                );
        }

        if (TypedValueAgainstProducts.Expected(typed) is { Expected: var (median, spread), Known: var known })
            return ByFactor(
                typed,
                median,
                spread,
                Factors,
                $"what {TypedValueAgainstProducts.Names(known)} on this element let expect by their densities"
            );
        return typed.Content?.StartValue is { } start
            ? ByFactor(typed, start.Value, start.StandardUncertainty, [], "what displacement and density let expect")
            : null;
    }

    internal static bool Accepts(TestBehindValue test, TypedValue typed)
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

    private static Objection Off(TypedValue typed, MassPerRevolution compared, RefusalCode otherwise, string what) =>
        ByFactor(typed, compared, 0, Factors, what)
        ?? new(
            otherwise,
            $"{typed.InWords} is {Compared(Ratio(typed, compared))} {compared}, {what}. {TypedValueAgainstProducts.Belongs(typed) ?? $"Digits may have been swapped, or it belongs to another product or element."}"
        );

    // With a value that is only expected, a factor has to be met no closer than the value is known, and it has to be the nearest one.
    private static Objection? ByFactor(
        TypedValue typed,
        MassPerRevolution compared,
        double spread,
        (double Factor, RefusalCode Code)[] factors,
        string what
    )
    {
        const double Surprising = 3;
        var ratio = Ratio(typed, compared);
        var size = Math.Abs(Math.Log(ratio));
        if (size < Surprising * spread)
            return null;
        var tens = Math.Max(1, Math.Round(size / Math.Log(10)));
        var (away, code) = factors
            .Append((Factor: Math.Pow(10, tens), Code: TypedValueCodes.TypedDecimalSlip))
            .Select(one => (Away: Math.Abs(size - Math.Log(one.Factor)), one.Code))
            .MinBy(one => one.Away);
        return away <= NearFactor + spread
            ? new(code, $"{typed.InWords} is {Compared(ratio)} {compared}, {what}. {Suspicion(code)}")
            : null;
    }

    private static string Suspicion(RefusalCode code) =>
        code == TypedValueCodes.TypedDecimalSlip ? "The decimal point may have slipped."
        : code == TypedValueCodes.TypedInOtherUnit ? "That is what pounds taken as kilograms look like, or kilograms taken as pounds."
        : "That is what a count doubled or halved looks like.";

    private static Sentence Compared(double ratio) =>
        ratio switch
        {
            >= 1.5 => $"{ratio:0.##} times",
            <= 1 / 1.5 => $"{ratio:0.#####} times",
            >= 1 => $"{new Ratio(ratio - 1):F1} above",
            _ => $"{new Ratio(1 - ratio):F1} below",
        };

    private static double Ratio(TypedValue typed, MassPerRevolution compared) =>
        typed.Value.KilogramsPerRevolution / compared.KilogramsPerRevolution;

    private sealed record Objection(RefusalCode Code, Sentence Detail);
}
