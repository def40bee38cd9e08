using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.MeterSpeeds;

/// <summary>Meter speed for each rate and ground speed, windows inside the limits, and the choice of an element.</summary>
public static class MeterSpeedEvaluation
{
    /// <summary>From memory: ASAE D497 lists grain drills at 55 to 80 %, typically 70 %.</summary>
    public const double DefaultFieldEfficiency = 0.70;

    /// <summary>That default with its origin.</summary>
    public static DefaultValue FieldEfficiency { get; } =
        new(new Ratio(DefaultFieldEfficiency), "from memory: ASAE D497 lists grain drills at 55 to 80 %, typically 70 %");

    // Less than 10 % of room is worth a word; judgement, no published source.
    private static readonly double NearLimit = Math.Log(1.10);

    /// <summary>Evaluates <paramref name="question"/>.</summary>
    /// <param name="question">At least one rate above 0, one ground speed and one element.</param>
    /// <remarks>
    /// <para>Formula: n = R W v / k rev/s, with k (kg/rev) at that n, R in kg/m2, W in m, v in m/s. Elements are ranked by min(ln(n_low /
    /// n_min), ln(n_max / n_high)) over all corners of the range of rates and ground speeds; a zero rate is not a corner.</para>
    /// <para>Range: rates, widths and speeds above 0; outside the measured speeds the nearest value is kept, and a finding says so.</para>
    /// <para>Source: our own derivation; field capacity as <see cref="FieldCapacity"/> (SOURCES.md, keys UKY-73 and ISU-696); the default
    /// efficiency is from memory.</para>
    /// <para>Accuracy: speeds, windows and spacings within 1e-12 relative (MeterSpeedTests, MeterWindowTests,
    /// DischargeSpacingTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">No rate above 0, no ground speed or no element.</exception>
    public static MeterSpeedResult Evaluate(MeterSpeedQuestion question)
    {
        MassPerArea[] rates =
        [
            .. question.Rates.Where(rate => rate.KilogramsPerSquareMetre > 0).Distinct().OrderBy(rate => rate.KilogramsPerSquareMetre),
        ];
        Speed[] speeds = [.. question.GroundSpeeds.Distinct().OrderBy(speed => speed.MetresPerSecond)];
        if (rates.Length == 0 || speeds.Length == 0 || question.Elements.Count == 0)
            throw new ArgumentException("A rate above 0, a ground speed and an element are needed.", nameof(question));

        ElementResult[] elements =
        [
            .. question
                .Elements.Select(element => Judge(element, question.CoveredWidth.Metres, rates, speeds))
                .OrderByDescending(result => result.Margin),
        ];
        CapacityAt[] capacity = [.. question.GroundSpeeds.Select(speed => Capacity(question, speed))];
        var fan = question.Fan is { } asked ? FanEvaluation.Evaluate(asked, speeds) : null;
        return new MeterSpeedResult
        {
            Headline = fan is { Verdict: not FanVerdict.Suits } ? $"{Headline(elements)} {fan.Headline}" : Headline(elements),
            Elements = elements,
            Capacity = capacity,
            Fan = fan,
            Cautions = fan is null ? [] : [Caution.ManualFirst, Caution.UnexpectedStart, Caution.StoredPressure],
            Assumptions = question is { FieldEfficiency: null, Stops: null } ? [FieldEfficiency.Assumed("fieldEfficiency")] : [],
            Findings =
            [
                .. elements.Select(element => element.Element).Select(Beyond).OfType<Finding>(),
                .. elements.SelectMany(element => Findings(element, elements[0].Fits)),
                .. capacity.Select(at => at.FieldEfficiency).Distinct().Select(FieldCapacity.Unusual).OfType<Finding>(),
                .. fan?.Findings ?? [],
            ],
        };
    }

    // The largest value of the curve is the one that an element may be unable to hold.
    private static Finding? Beyond(MeteringElement element) =>
        element.Content?.FindingOf(
            $"{element.Name}: the mass per revolution stated",
            element.Delivery.Largest,
            ElementDefaults.MassPerRevolution.Value.Canonical
        );

    private static CapacityAt Capacity(MeterSpeedQuestion question, Speed speed)
    {
        var width = question.WorkingWidth ?? question.CoveredWidth;
        var efficiency = question.Stops is { } stops
            ? FieldCapacity.EfficiencyWith(width, speed, stops)
            : question.FieldEfficiency ?? DefaultFieldEfficiency;
        return new CapacityAt(
            speed,
            efficiency,
            FieldCapacity.PerHour(width, speed, efficiency),
            question.TimePerDay is { } day ? FieldCapacity.During(width, speed, efficiency, day) : null,
            question.Area is { } area ? FieldCapacity.TimeFor(area, width, speed, efficiency) : null
        );
    }

    private static ElementResult Judge(MeteringElement element, double width, MassPerArea[] rates, Speed[] speeds)
    {
        MassPerArea[] cornerRates = rates.Length == 1 ? rates : [rates[0], rates[^1]];
        Speed[] cornerSpeeds = speeds.Length == 1 ? speeds : [speeds[0], speeds[^1]];
        Corner[] corners = [.. cornerRates.SelectMany(rate => cornerSpeeds.Select(speed => At(element, width, rate, speed)))];
        var lowest = corners.Min(corner => corner.MeterSpeed.RevolutionsPerSecond);
        var highest = corners.Max(corner => corner.MeterSpeed.RevolutionsPerSecond);
        var least = element.Limits.Minimum is { } minimum ? element.Delivery.FlowAt(minimum.RevolutionsPerSecond) : (double?)null;
        var most = element.Limits.Maximum is { } maximum ? element.Delivery.FlowAt(maximum.RevolutionsPerSecond) : (double?)null;
        var (tooSlow, tooFast) = Outside(element, corners);
        return new ElementResult
        {
            Element = element,
            TooSlow = tooSlow,
            TooFast = tooFast,
            Margin = element.Limits.Margin(lowest, highest),
            Corners = corners,
            SpeedWindows =
            [
                .. rates.Select(rate => new SpeedWindow(
                    rate,
                    Speed(least, width * rate.KilogramsPerSquareMetre),
                    Speed(most, width * rate.KilogramsPerSquareMetre)
                )),
            ],
            RateWindows =
            [
                .. speeds.Select(speed => new RateWindow(
                    speed,
                    Rate(least, width * speed.MetresPerSecond),
                    Rate(most, width * speed.MetresPerSecond)
                )),
            ],
        };
    }

    private static Corner At(MeteringElement element, double width, MassPerArea rate, Speed speed)
    {
        var n = element.Delivery.SpeedFor(rate.KilogramsPerSquareMetre * width * speed.MetresPerSecond);
        Length? spacing = element.Pockets is { } pockets ? new Length(speed.MetresPerSecond / (n * pockets)) : null;
        return new Corner(rate, speed, new RotationalSpeed(n), element.Limits.Allow(n), spacing);
    }

    private static Speed? Speed(double? flow, double massPerMetre) => flow is { } known ? new Speed(known / massPerMetre) : null;

    private static MassPerArea? Rate(double? flow, double areaPerSecond) =>
        flow is { } known ? new MassPerArea(known / areaPerSecond) : null;

    private static Sentence Headline(ElementResult[] elements)
    {
        var best = elements[0];
        if (!best.Fits)
            return $"No element serves all rates at all ground speeds. The nearest is {best.Element.Name}: {Remedy(best)}";
        if (double.IsPositiveInfinity(best.Margin))
            return $"No limits of the meter speed are known. {best.Element.Name} turns at {Range(best)}.";
        return $"Use {best.Element.Name}: it turns at {Range(best)} and stays a factor of {1 + best.Room:F1} away from its nearer limit.";
    }

    private static Sentence Range(ElementResult result)
    {
        var lowest = result.Corners.MinBy(corner => corner.MeterSpeed.RevolutionsPerSecond)!.MeterSpeed;
        var highest = result.Corners.MaxBy(corner => corner.MeterSpeed.RevolutionsPerSecond)!.MeterSpeed;
        return lowest == highest ? (Sentence)$"{lowest:F1}" : (Sentence)$"{lowest:F1} to {highest:F1}";
    }

    // Says what would help: the slowest speed for the lowest rate, the fastest for the highest.
    private static Sentence Remedy(ElementResult result)
    {
        var slowest = result.SpeedWindows[0].Minimum;
        var fastest = result.SpeedWindows[^1].Maximum;
        var tooSlow = result.Corners.Any(corner =>
            !corner.Within && corner.MeterSpeed.RevolutionsPerSecond < (result.Element.Limits.Minimum?.RevolutionsPerSecond ?? 0)
        );
        var tooFast = result.Corners.Any(corner =>
            !corner.Within
            && corner.MeterSpeed.RevolutionsPerSecond > (result.Element.Limits.Maximum?.RevolutionsPerSecond ?? double.PositiveInfinity)
        );
        if (tooSlow && tooFast)
            return $"with it the lowest rate needs at least {slowest:F1} and the highest rate at most {fastest:F1}.";
        return tooFast
            ? (Sentence)$"with it the highest rate can be driven at no more than {fastest:F1}."
            : $"with it the lowest rate needs at least {slowest:F1}.";
    }

    private static Sentence Others(int corners) =>
        corners == 1 ? (Sentence)$"" : $", the worst of {new CountInWords(corners)} such combinations";

    // Of each side the worst corner; the others stand in the answer.
    private static (Sentence? TooSlow, Sentence? TooFast) Outside(MeteringElement element, Corner[] corners)
    {
        Corner[] outside = [.. corners.Where(corner => !corner.Within).OrderBy(corner => corner.MeterSpeed.RevolutionsPerSecond)];
        Corner[] slow =
        [
            .. outside.Where(corner => corner.MeterSpeed.RevolutionsPerSecond < (element.Limits.Minimum?.RevolutionsPerSecond ?? 0)),
        ];
        return (
            slow is [var slowest, ..]
                ? (Sentence)
                    $"{element.Name}: {slowest.Rate} at {slowest.GroundSpeed} takes {slowest.MeterSpeed:F1}, under the least {element.Limits.Minimum:F1}, where it turns unevenly{Others(slow.Length)}. Drive faster or use an element that delivers less per revolution."
                : null,
            outside.Length > slow.Length && outside[^1] is var fastest
                ? (Sentence)
                    $"{element.Name}: {fastest.Rate} at {fastest.GroundSpeed} takes {fastest.MeterSpeed:F1}, above the highest {element.Limits.Maximum:F1}, so that the rate will not be reached{Others(outside.Length - slow.Length)}. Drive slower or use an element that delivers more per revolution."
                : null
        );
    }

    private static IEnumerable<Finding> Findings(ElementResult result, bool anotherFits)
    {
        var element = result.Element;
        foreach (var outside in new[] { result.TooSlow, result.TooFast }.OfType<Sentence>())
        {
            yield return anotherFits
                ? Finding.Note(SharedCodes.OutsideMeterWindow, outside)
                : Finding.Warning(SharedCodes.OutsideMeterWindow, outside);
        }

        if (result.Fits && result.Margin < NearLimit)
            yield return Finding.Note(
                MeterSpeedCodes.NearMeterLimit,
                $"{element.Name} comes within {new Ratio(result.Room):F0} of a limit of its speed."
            );
        var fastest = result.Corners.Max(corner => corner.MeterSpeed.RevolutionsPerSecond);
        var slowest = result.Corners.Min(corner => corner.MeterSpeed.RevolutionsPerSecond);
        if (fastest > element.Delivery.FastestMeasured || slowest < element.Delivery.SlowestMeasured)
            yield return Finding.Note(
                MeterSpeedCodes.OutsideMeasuredSpeeds,
                $"{element.Name} would turn at speeds outside those at which its mass per revolution was measured; the nearest measured value was used."
            );
    }
}
