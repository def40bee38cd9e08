using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.DriveWheelTurns;

/// <summary>Headline, reasons and findings about a drive wheel in plain words.</summary>
internal static class DriveWheelSentences
{
    private const double RoundsToNothing = 0.0005;

    public static FormattableString Headline(DriveWheelQuestion question, DriveWheelResult result)
    {
        if (result.Rate is { } rate)
            return Tested(question, result, new MassPerArea(rate.Value), new Ratio(rate.ExpandedUncertainty / rate.Value));
        if (result.RateOfStatedMeter is { } reckoned && result.Turns.Count == 0)
            return $"Reckoned from the meter, the machine puts down {reckoned}. A turn test shows whether it does.";
        if (result.Turns is not [var first, ..])
            return $"One turn of the drive wheel covers {result.Wheel.AreaPerTurn}.";
        return first.Total is { } total
            ? (FormattableString)$"Turn the drive wheel {first.Turns:0.0} times for {first.Area} and expect {total}{Each(first.PerOutlet)}."
            : $"Turn the drive wheel {first.Turns:0.0} times for {first.Area}.";
    }

    public static List<Finding> Reasons(DriveWheelResult result)
    {
        if (result is not { Acceptance: { } acceptance, Verdict: { } verdict, Rate: { } rate })
            return [];
        var tolerance = new Ratio(result.Tolerance);
        var probability = new Ratio(acceptance.Probability);
        return verdict switch
        {
            Verdict.Investigate => [Finding.Stop(FindingCode.RateImplausible,
                $"A rate of {new MassPerArea(rate.Value):0.##} is outside of what seeding machines put down, {Least:0.##} to {Most:0}. Check units, turns, width and circumference.")],
            Verdict.Keep => [Finding.Note(FindingCode.WithinTolerance,
                $"The rate is within {tolerance:0.##} of the target with a probability of {ProbabilityWords.Likely(acceptance.Probability)}.")],
            Verdict.Adopt => [Finding.Warning(FindingCode.RateOffTarget,
                $"The rate is within {tolerance:0.##} of the target with a probability of {ProbabilityWords.OnlyLikely(acceptance.Probability)}.")],
            _ => [Finding.Warning(FindingCode.RateNotShown,
                $"The rate is within {tolerance:0.##} of the target with a probability of {probability:F0}: not enough to keep the setting, and too much to change it.")],
        };
    }

    public static List<Finding> Findings(DriveWheelQuestion question, DriveWheelResult result, bool testsAgree)
    {
        var findings = new List<Finding>();
        if (!testsAgree)
            findings.Add(Finding.Warning(FindingCode.CatchesScatterMoreThanExpected,
                $"The turn tests differ by more than is expected of them. The interval has been widened for it."));
        Implausible(question, result, findings);
        if (result.Origin == WheelOrigin.Diameter)
            findings.Add(Finding.Warning(FindingCode.CircumferenceFromDiameter,
                $"The circumference of {result.Wheel.Circumference} was reckoned from the diameter. A loaded tyre rolls shorter: it turns more often over an area than said here, and puts down more."));
        if (result.Origin == WheelOrigin.MeasuredRun && question.Skid is > 0 or < 0)
            findings.Add(Finding.Note(FindingCode.SkidCountedTwice,
                $"The skid is reckoned on top of the measured run. If the wheel drove the meters on that run, its circumference holds the skid already: then leave skid out."));
        Outlets(result, findings);
        if (result is { Verdict: Verdict.Adopt, Correction: { } correction } && (correction.Factor > DriveWheelDefaults.LargeCorrection || correction.Factor < 1 / DriveWheelDefaults.LargeCorrection))
            findings.Add(Finding.Warning(FindingCode.LargeCorrection,
                $"A correction by a factor of {correction.Factor:0.00} is large: the rate is hardly proportional to the setting that far. Take it as a first step, and look at the gears as well."));
        return findings;
    }

    private static MassPerArea Least => new(DriveWheelDefaults.LeastRate);

    private static MassPerArea Most => new(DriveWheelDefaults.MostRate);

    private static FormattableString Tested(DriveWheelQuestion question, DriveWheelResult result, MassPerArea rate, Ratio precision)
    {
        if (!DriveWheelEvaluation.IsPlausible(rate))
            return $"Do not use this test: {rate:0.##} is no rate that a seeding machine puts down. Check units, turns, width and circumference.";
        if (result is not { Acceptance: { } acceptance, Correction: { } correction })
            return $"The turn test gives {rate}, known within {precision:F1}.";
        FormattableString found = Math.Abs(acceptance.Deviation.Value) < RoundsToNothing
            ? (FormattableString)$"The turn test gives the target rate of {question.TargetRate}"
            : $"The turn test gives {rate}, {new Ratio(Math.Abs(acceptance.Deviation.Value)):F1} {(acceptance.Deviation.Value > 0 ? "above" : "below")} the target";
        return result.Verdict switch
        {
            Verdict.Keep => $"{found}, inside the tolerance of {new Ratio(result.Tolerance):0.##}. Keep the setting.",
            Verdict.Adopt => $"{found}. {Correct(question, correction)} Then test again.",
            _ => $"{found}. That is not sure enough: make another turn test with the same setting.",
        };
    }

    private static FormattableString Correct(DriveWheelQuestion question, SettingCorrection correction) => correction.Setting is { } setting
        ? (FormattableString)$"As a first step, move the setting from {question.Setting:0.##} to {setting:0.##}."
        : $"As a first step, make the setting {correction.Factor:0.000} times what it is.";

    private static FormattableString Each(Mass? perOutlet) => perOutlet is { } mass ? (FormattableString)$" in all, {mass} from each outlet" : $" in all";

    private static void Implausible(DriveWheelQuestion question, DriveWheelResult result, List<Finding> findings)
    {
        MassPerArea? of = result.Verdict == Verdict.Investigate ? null : result.Rate is { } rate ? new MassPerArea(rate.Value) : result.RateOfStatedMeter;
        foreach (var (name, value) in new[] { ("target rate", question.TargetRate), ("rate", of) })
        {
            if (value is { } odd && !DriveWheelEvaluation.IsPlausible(odd))
                findings.Add(Finding.Warning(FindingCode.RateImplausible,
                    $"A {name} of {odd:0.##} is outside of what seeding machines put down, {Least:0.##} to {Most:0}. Check units, turns, width and circumference."));
        }
    }

    private static void Outlets(DriveWheelResult result, List<Finding> findings)
    {
        for (var i = 0; i < result.Outlets.Count; i++)
        {
            var outlet = result.Outlets[i];
            if (!outlet.Within)
                findings.Add(Finding.Warning(FindingCode.OutletOffMean,
                    $"Outlet {i + 1} of those caught gives {new Ratio(Math.Abs(outlet.Deviation)):F1} {(outlet.Deviation > 0 ? "more" : "less")} than their mean; {new Ratio(result.Tolerance):0.##} is the limit."));
        }
    }
}
