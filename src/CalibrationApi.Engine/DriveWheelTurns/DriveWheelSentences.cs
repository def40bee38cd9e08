using System.Globalization;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.DriveWheelTurns;

/// <summary>Headline, reasons and findings about a drive wheel in plain words.</summary>
internal static class DriveWheelSentences
{
    private const double RoundsToNothing = 0.0005;

    // A gearing turned round is suggested where the rate is then about right; judgement.
    private const double AboutRight = 0.2;

    public static Sentence Headline(DriveWheelQuestion question, DriveWheelResult result)
    {
        if (result.Rate is { } rate)
            return Tested(question, result, new MassPerArea(rate.Value), new Ratio(rate.ExpandedUncertainty / rate.Value));
        if (result.RateOfStatedMeter is { } reckoned && result.Turns.Count == 0)
            return question.TargetRate is { } target && Off(reckoned, target) is { } off
                ? (Sentence)
                    $"Reckoned from the meter, the machine puts down {reckoned}, {off} the target. A turn test shows whether it does."
                : $"Reckoned from the meter, the machine puts down {reckoned}. A turn test shows whether it does.";
        if (result is { NeededMeterRevolutionsPerTurn: { } geared, Turns.Count: 0 })
            return $"Gear the meter to {geared:0.###} revolutions per turn of the drive wheel for {question.TargetRate}. A turn test shows whether it delivers that.";
        if (result.Turns is not [var first, ..])
            return $"One turn of the drive wheel covers {result.Wheel.AreaPerTurn}.";
        var turns = first.Turns.ToString(first.Turns < 10 ? "0.00" : "0.0", CultureInfo.InvariantCulture);
        return first.Total is { } total
            ? (Sentence)$"Turn the drive wheel {turns} times for {first.Area} and expect {total}{Each(first.PerOutlet)}."
            : $"Turn the drive wheel {turns} times for {first.Area}.";
    }

    public static List<Finding> Reasons(DriveWheelResult result)
    {
        if (result is not { Acceptance: { } acceptance, Rate: { } rate })
            return [];
        var tolerance = new Ratio(result.Tolerance);
        var probability = new Ratio(acceptance.Probability);
        return result.Verdict switch
        {
            DriveWheelVerdict.Investigate => Investigated(result, new MassPerArea(rate.Value)),
            DriveWheelVerdict.Keep =>
            [
                Finding.Note(
                    SharedCodes.WithinTolerance,
                    $"The rate is within {tolerance:0.##} of the target with a probability of {ProbabilityWords.Likely(acceptance.Probability)}."
                ),
            ],
            DriveWheelVerdict.Correct =>
            [
                Finding.Warning(
                    DriveWheelCodes.RateOffTarget,
                    $"The rate is within {tolerance:0.##} of the target with a probability of {ProbabilityWords.OnlyLikely(acceptance.Probability)}."
                ),
            ],
            _ =>
            [
                Finding.Warning(
                    DriveWheelCodes.RateNotShown,
                    $"The rate is known within {new Ratio(acceptance.Deviation.ExpandedUncertainty):F1}, and it is within {tolerance:0.##} of the target with a probability of {probability:F0}: not sure enough to keep the setting, nor to change it."
                ),
            ],
        };
    }

    private static List<Finding> Investigated(DriveWheelResult result, MassPerArea rate) =>
        !DriveWheelEvaluation.IsPlausible(rate)
            ?
            [
                Finding.Stop(
                    DriveWheelCodes.RateImplausible,
                    $"A rate of {rate:0.##} is outside of what seeding machines put down, {Least:0.##} to {Most:0}. Check units, turns, width and circumference."
                ),
            ]
            :
            [
                Finding.Stop(
                    DriveWheelCodes.OutletGaveNothing,
                    $"{Empty(result)} gave nothing, so the turns say nothing about the setting."
                ),
            ];

    public static List<Finding> Findings(DriveWheelQuestion question, DriveWheelResult result, bool testsAgree)
    {
        var findings = new List<Finding>();
        if (!testsAgree)
            findings.Add(
                Finding.Warning(
                    SharedCodes.CatchesScatterMoreThanExpected,
                    $"The turn tests differ by more than is expected of them. The interval has been widened for it."
                )
            );
        Implausible(question, result, findings);
        Reckoned(question, result, findings);
        if (result.Origin == WheelOrigin.Diameter)
            findings.Add(
                Finding.Warning(
                    DriveWheelCodes.CircumferenceFromDiameter,
                    $"The circumference of {result.Wheel.Circumference} was reckoned from the diameter. A loaded tyre rolls shorter: it turns more often over an area than said here, and puts down more."
                )
            );
        if (result.Origin == WheelOrigin.MeasuredRun && question.Skid is > 0 or < 0)
            findings.Add(
                Finding.Note(
                    DriveWheelCodes.SkidCountedTwice,
                    $"The skid is reckoned on top of the measured run. If the wheel drove the meters on that run, its circumference holds the skid already: then leave skid out."
                )
            );
        Outlets(result, findings);
        if (
            result is { Verdict: DriveWheelVerdict.Correct, Correction: { } correction }
            && (correction.Factor > DriveWheelDefaults.LargeCorrection || correction.Factor < 1 / DriveWheelDefaults.LargeCorrection)
        )
            findings.Add(
                Finding.Warning(
                    DriveWheelCodes.LargeCorrection,
                    $"A correction by a factor of {correction.Factor:0.00} is large: the rate is hardly proportional to the setting that far. Take it as a first step, and look at the gears as well."
                )
            );
        return findings;
    }

    private static MassPerArea Least => new(DriveWheelDefaults.LeastRate);

    private static MassPerArea Most => new(DriveWheelDefaults.MostRate);

    private static Sentence Tested(DriveWheelQuestion question, DriveWheelResult result, MassPerArea rate, Ratio precision)
    {
        if (!DriveWheelEvaluation.IsPlausible(rate))
            return $"Do not use this test: {rate:0.##} is no rate that a seeding machine puts down. Check units, turns, width and circumference.";
        if (Empty(result) is { } empty)
            return $"{empty} gave nothing. Clear the way from meter to outlet, then test again before you change the setting.";
        if (result is not { Acceptance: { } acceptance, Correction: { } correction })
            return $"The turn test gives {rate}, known within {precision:F1}.";
        Sentence found =
            Math.Abs(acceptance.Deviation.Value) < RoundsToNothing
                ? (Sentence)$"The turn test gives the target rate of {question.TargetRate}"
                : $"The turn test gives {rate}, {new Ratio(Math.Abs(acceptance.Deviation.Value)):F1} {(acceptance.Deviation.Value > 0 ? "above" : "below")} the target";
        return result.Verdict switch
        {
            DriveWheelVerdict.Keep => $"{found}, inside the tolerance of {new Ratio(result.Tolerance):0.##}. Keep the setting.",
            DriveWheelVerdict.Correct => $"{found}. {Correct(question, correction)} Then test again.",
            _ => $"{found}. That is not sure enough: {Again(result.Obstacle)}",
        };
    }

    private static Sentence Again(TestObstacle? obstacle) =>
        obstacle switch
        {
            TestObstacle.Outlets => $"catch from more outlets, because more turns of these cannot tell the others.",
            TestObstacle.Wheel => $"measure on the ground how far the wheel rolls in a turn, because more turn tests cannot tell.",
            TestObstacle.Scale => $"use a better scale or catch more, because more tests like this cannot tell.",
            _ => $"make another turn test with the same setting.",
        };

    // The outlets that gave nothing, by their place in the list; null when all gave something.
    private static string? Empty(DriveWheelResult result)
    {
        string[] places =
        [
            .. result
                .Outlets.Index()
                .Where(one => one.Item.GaveNothing)
                .Select(one => (one.Index + 1).ToString(CultureInfo.InvariantCulture)),
        ];
        return places.Length switch
        {
            0 => null,
            1 => $"Outlet {places[0]} of those caught",
            _ => $"Outlets {string.Join(", ", places[..^1])} and {places[^1]} of those caught",
        };
    }

    // Null where the two are as good as equal.
    private static Sentence? Off(MassPerArea rate, MassPerArea target)
    {
        var ratio = rate.KilogramsPerSquareMetre / target.KilogramsPerSquareMetre;
        return Math.Abs(ratio - 1) < RoundsToNothing ? null
            : ratio >= 2 ? (Sentence)$"{ratio:0.#} times"
            : $"{new Ratio(Math.Abs(ratio - 1)):F1} {(ratio > 1 ? "above" : "below")}";
    }

    // A gearing is easily stated the other way round.
    private static void Reckoned(DriveWheelQuestion question, DriveWheelResult result, List<Finding> findings)
    {
        if (
            result.RateOfStatedMeter is not { } rate
            || question is not { TargetRate: { } target, MassPerRevolution: { } perRevolution, MeterRevolutionsPerTurn: { } gearing }
            || IsNear(rate, target, result.Tolerance)
            || Off(rate, target) is not { } off
        )
            return;
        var turned = result.Wheel.Rate(perRevolution, 1 / gearing);
        findings.Add(
            Finding.Warning(
                DriveWheelCodes.RateOffTarget,
                !IsNear(rate, target, DriveWheelDefaults.LargeCorrection - 1) && IsNear(turned, target, AboutRight)
                    ? (Sentence)
                        $"Reckoned from the meter, the rate is {rate}, {off} the target. With {1 / gearing:0.###} meter revolutions per turn of the wheel it would be {turned}: is the gearing stated the wrong way round?"
                    : $"Reckoned from the meter, the rate is {rate}, {off} the target. {result.NeededPerMeterRevolution} would be needed in place of {perRevolution}, or {result.NeededMeterRevolutionsPerTurn:0.###} meter revolutions per turn of the wheel in place of {gearing:0.###}."
            )
        );
    }

    private static bool IsNear(MassPerArea rate, MassPerArea target, double tolerance) =>
        !Threshold.IsAbove(Math.Abs(rate.KilogramsPerSquareMetre / target.KilogramsPerSquareMetre - 1), tolerance);

    private static Sentence Correct(DriveWheelQuestion question, SettingCorrection correction) =>
        correction.Setting is { } setting
            ? (Sentence)$"As a first step, move the setting from {question.Setting:0.##} to about {setting:G3}."
            : $"As a first step, make the setting {correction.Factor:0.000} times what it is.";

    private static Sentence Each(Mass? perOutlet) => perOutlet is { } mass ? (Sentence)$" in all, {mass} from each outlet" : $" in all";

    private static void Implausible(DriveWheelQuestion question, DriveWheelResult result, List<Finding> findings)
    {
        MassPerArea? of =
            result.Verdict == DriveWheelVerdict.Investigate ? null
            : result.Rate is { } rate ? new MassPerArea(rate.Value)
            : result.RateOfStatedMeter;
        foreach (var (name, value) in new[] { ("target rate", question.TargetRate), ("rate", of) })
        {
            if (value is { } odd && !DriveWheelEvaluation.IsPlausible(odd))
                findings.Add(
                    Finding.Warning(
                        DriveWheelCodes.RateImplausible,
                        $"A {name} of {odd:0.##} is outside of what seeding machines put down, {Least:0.##} to {Most:0}. Check units, turns, width and circumference."
                    )
                );
        }
    }

    private static void Outlets(DriveWheelResult result, List<Finding> findings)
    {
        // An outlet without any catch shifts the mean, so that the others are not to blame.
        if (Empty(result) is { } empty)
        {
            if (result.Verdict != DriveWheelVerdict.Investigate)
                findings.Add(
                    Finding.Warning(
                        DriveWheelCodes.OutletGaveNothing,
                        $"{empty} gave nothing. Clear the way from meter to outlet, and test again."
                    )
                );
            return;
        }

        (int Index, OutletCatch Item)[] off =
        [
            .. result.Outlets.Index().Where(one => !one.Item.Within).OrderByDescending(one => Math.Abs(one.Item.Deviation)),
        ];
        if (off is not [var worst, ..])
            return;
        Sentence gives =
            $"outlet {worst.Index + 1} of those caught gives {new Ratio(Math.Abs(worst.Item.Deviation)):F1} {(worst.Item.Deviation > 0 ? "more" : "less")} than their mean";
        findings.Add(
            Finding.Warning(
                DriveWheelCodes.OutletOffMean,
                off.Length == 1
                    ? (Sentence)$"One outlet is beyond the limit of {new Ratio(result.Tolerance):0.##}: {gives}."
                    : $"{off.Length} of {result.Outlets.Count} outlets are beyond the limit of {new Ratio(result.Tolerance):0.##}; furthest off, {gives}."
            )
        );
    }
}
