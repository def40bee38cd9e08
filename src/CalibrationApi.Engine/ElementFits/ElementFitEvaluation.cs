using System.Globalization;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.MeterSpeeds;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.VolumeChecks;

namespace CalibrationApi.Engine.ElementFits;

/// <summary>The displacements that keep a meter inside its speeds, and which element at hand comes nearest.</summary>
public static class ElementFitEvaluation
{
    /// <summary>Largest displacement that any element has, m3; judgement.</summary>
    public const double LargestDisplacement = 1;

    /// <summary>Smallest displacement that any element has, m3: a cubic millimetre is less than one small seed; judgement.</summary>
    public const double SmallestDisplacement = 1e-9;

    // Nobody changes more elements in one field; judgement.
    private const int MostShares = 4;

    // A whole number of elements must not become one more by rounding.
    private const double Rounding = 1e-9;

    /// <summary>Evaluates <paramref name="question"/>.</summary>
    /// <param name="question">At least one rate and one ground speed.</param>
    /// <remarks>
    /// <para>Formula: the meter turns n = R W v / (rho V eta). From V_a = max(R v) W / (rho eta n_max) it never turns too fast, up to V_b
    /// = min(R v) W / (rho eta n_min) never too slowly; V_a is above V_b where max(R v) / min(R v) = F is above n_max / n_min = G. Then one
    /// of these opens the window: a highest ground speed or rate F / G times lower, a lowest one F / G times higher, or the smallest number
    /// of elements N with (R_max / R_min)^(1 / N) v_max / v_min at most G, which take over from each other at equal ratios of the rate.
    /// Spread and probabilities as <see cref="DisplacementWindow"/>, with s^2 = u_rho^2 + s_eta^2. Elements come in the order of <see
    /// cref="MeterSpeedEvaluation"/>, which is that of |ln(V / V_m)|.</para>
    /// <para>Range: values above 0, uncertainties at least 0. Refused: no rate above 0, a slowest meter speed not below the fastest, and
    /// what takes an element larger or smaller than any. The fill efficiency is that of all speeds and elements: where the mass per
    /// revolution of an element was measured, <see cref="MeterSpeedEvaluation"/> judges it better.</para>
    /// <para>Source: our own derivation, from the formulas of <see cref="VolumeCheckEvaluation"/> and <see cref="MeterSpeedEvaluation"/>;
    /// the default fill efficiency and the limits of displacements are judgement.</para>
    /// <para>Accuracy: ends, middles, meter speeds and narrower spans within 1e-12 relative (ElementFitTests).</para>
    /// </remarks>
    /// <exception cref="ArgumentException">No ground speed.</exception>
    public static Outcome<ElementFitResult> Evaluate(ElementFitQuestion question)
    {
        MassPerArea[] rates = [.. question.Rates.Where(rate => rate.KilogramsPerSquareMetre > 0)];
        if (question.GroundSpeeds.Count == 0)
            throw new ArgumentException("A ground speed is needed.", nameof(question));
        if (rates.Length == 0)
            return new Refusal(
                SharedCodes.SettingsAtOdds,
                "rates",
                $"Every rate is zero, so no meter turns. Give at least one rate above zero."
            );
        if (question.SlowestMeter.RevolutionsPerSecond >= question.FastestMeter.RevolutionsPerSecond)
            return new Refusal(
                SharedCodes.SettingsAtOdds,
                "speedLimits/minimum",
                $"The minimum has to be below the maximum. Check whether they were swapped and whether both units are right."
            );

        var (lowest, highest) = (
            Need(question, rates.MinBy(rate => rate.Canonical), question.GroundSpeeds.MinBy(speed => speed.Canonical)),
            Need(question, rates.MaxBy(rate => rate.Canonical), question.GroundSpeeds.MaxBy(speed => speed.Canonical))
        );
        // What a cubic metre of displacement delivers; its own uncertainty is that of each element.
        var perVolume = Expect(question, new(new Volume(1), 0));
        var window = WindowFor(question, perVolume, lowest.Flow, highest.Flow);
        if (Impossible(window) is { } refusal)
            return refusal;

        var coverage = question.CoverageProbability ?? CatchTestLimits.DefaultCoverage;
        var inner = window.Inner(coverage);
        var waysOut = window.IsEmpty ? WaysOut(question, perVolume, lowest, highest) : null;
        var (meter, elements) = Elements(question, window);
        return new ElementFitResult
        {
            Headline = ElementFitSentences.Headline(window, waysOut, elements, meter?.Headline),
            Window = window,
            Inner = inner,
            HighestNeed = highest,
            LowestNeed = lowest,
            WaysOut = waysOut,
            FillEfficiency = perVolume.FillEfficiency,
            Parts = [.. perVolume.Parts.Where(part => part.Source != "displacement")],
            Elements = elements,
            Cautions = [Caution.ManualFirst, Caution.UnexpectedStart, Caution.RotatingParts, Caution.ProductDust],
            Assumptions = [.. perVolume.Assumptions, .. OfElements(question)],
            Findings =
            [
                .. new[]
                {
                    ElementFitSentences.OfEmpty(question, lowest, highest, waysOut),
                    ElementFitSentences.OfDoubt(coverage, window, inner, elements),
                }
                    .Concat(Kinds(question).Select(kind => VolumeCheckSentences.OfFill(perVolume.FillEfficiency.Median.Fraction, kind)))
                    .OfType<Finding>(),
                .. meter?.Findings ?? [],
            ],
        };
    }

    private static ProductNeed Need(ElementFitQuestion question, MassPerArea rate, Speed speed) =>
        new(rate, speed, new MassFlow(rate.KilogramsPerSquareMetre * question.CoveredWidth.Metres * speed.MetresPerSecond));

    private static VolumeCheckResult Expect(ElementFitQuestion question, Uncertain<Volume> displacement) =>
        VolumeCheckEvaluation.Evaluate(
            new VolumeCheckQuestion
            {
                Displacement = displacement,
                Density = question.Density,
                Fill = question.Fill,
                CoverageProbability = question.CoverageProbability,
            }
        );

    private static DisplacementWindow WindowFor(ElementFitQuestion question, VolumeCheckResult perVolume, MassFlow least, MassFlow most)
    {
        var delivery = perVolume.Expected.Median.KilogramsPerRevolution;
        return new DisplacementWindow(
            new Volume(most.KilogramsPerSecond / (question.FastestMeter.RevolutionsPerSecond * delivery)),
            new Volume(least.KilogramsPerSecond / (question.SlowestMeter.RevolutionsPerSecond * delivery)),
            perVolume.Expected.Spread
        );
    }

    private static Refusal? Impossible(DisplacementWindow window)
    {
        Sentence? why =
            window.Lower.CubicMetres > LargestDisplacement
                ? $"The highest rate at the highest ground speed takes an element of at least {window.Lower} per revolution, more than any sweeps ({new Volume(LargestDisplacement)})."
            : window.Upper.CubicMetres < SmallestDisplacement
                ? (Sentence)
                    $"The lowest rate at the lowest ground speed takes an element of at most {window.Upper} per revolution, less than any sweeps ({new Volume(SmallestDisplacement)})."
            : null;
        return why is null
            ? null
            : new Refusal(
                SharedCodes.SettingsAtOdds,
                "rates",
                $"{why} Check the units of rates, ground speeds, width, meter speeds and bulk density. A rate of 0 means off."
            );
    }

    private static WaysOut WaysOut(ElementFitQuestion question, VolumeCheckResult perVolume, ProductNeed lowest, ProductNeed highest)
    {
        var excess =
            highest.Flow.KilogramsPerSecond
            / lowest.Flow.KilogramsPerSecond
            * (question.SlowestMeter.RevolutionsPerSecond / question.FastestMeter.RevolutionsPerSecond);
        var bySpeed = highest.GroundSpeed.MetresPerSecond >= lowest.GroundSpeed.MetresPerSecond * excess;
        var byRate = highest.Rate.KilogramsPerSquareMetre >= lowest.Rate.KilogramsPerSquareMetre * excess;
        return new WaysOut(
            bySpeed ? new Speed(highest.GroundSpeed.MetresPerSecond / excess) : null,
            bySpeed ? new Speed(lowest.GroundSpeed.MetresPerSecond * excess) : null,
            byRate ? new MassPerArea(highest.Rate.KilogramsPerSquareMetre / excess) : null,
            byRate ? new MassPerArea(lowest.Rate.KilogramsPerSquareMetre * excess) : null,
            Shares(question, perVolume, lowest, highest)
        );
    }

    private static ShareOfRates[] Shares(ElementFitQuestion question, VolumeCheckResult perVolume, ProductNeed lowest, ProductNeed highest)
    {
        var rates = Math.Log(highest.Rate.KilogramsPerSquareMetre / lowest.Rate.KilogramsPerSquareMetre);
        var ofOne =
            Math.Log(question.FastestMeter.RevolutionsPerSecond / question.SlowestMeter.RevolutionsPerSecond)
            - Math.Log(highest.GroundSpeed.MetresPerSecond / lowest.GroundSpeed.MetresPerSecond);
        var needed = Math.Ceiling(rates / ofOne - Rounding);
        if (ofOne <= Rounding || needed > MostShares)
            return [];
        MassPerArea[] ends =
        [
            lowest.Rate,
            .. Enumerable
                .Range(1, (int)needed - 1)
                .Select(i => new MassPerArea(lowest.Rate.KilogramsPerSquareMetre * Math.Exp(rates * i / needed))),
            highest.Rate,
        ];
        return
        [
            .. ends.Zip(ends.Skip(1), (low, high) =>
                new ShareOfRates(
                    low,
                    high,
                    WindowFor(
                        question,
                        perVolume,
                        Need(question, low, lowest.GroundSpeed).Flow,
                        Need(question, high, highest.GroundSpeed).Flow
                    )
                )
            ),
        ];
    }

    private static (MeterSpeedResult? Meter, FittingElement[] Elements) Elements(ElementFitQuestion question, DisplacementWindow window)
    {
        if (question.Elements.Count == 0)
            return (null, []);
        var limits = new MeterSpeedLimits(question.SlowestMeter, question.FastestMeter);
        // An order of its own, so that the answer does not hang on the one in which they are listed.
        (ElementAtHand AtHand, LogInterval<MassPerRevolution> Delivery, MeteringElement Metering)[] elements =
        [
            .. question
                .Elements.OrderBy(element => element.Displacement.Value.CubicMetres)
                .ThenBy(element => element.Displacement.RelativeUncertainty)
                .ThenBy(element => element.Name, StringComparer.Ordinal)
                .Select(element => (element, Expect(question, element.Displacement).Expected))
                .Select(one =>
                    (one.element, one.Expected, new MeteringElement(one.element.Name, DeliveryCurve.Constant(one.Expected.Median), limits))
                ),
        ];
        var meter = MeterSpeedEvaluation.Evaluate(
            new MeterSpeedQuestion
            {
                CoveredWidth = question.CoveredWidth,
                Rates = question.Rates,
                GroundSpeeds = question.GroundSpeeds,
                Elements = [.. elements.Select(element => element.Metering)],
            }
        );
        return (
            meter,
            [
                .. meter.Elements.Select(result =>
                {
                    var (atHand, delivery, _) = elements.Single(element => ReferenceEquals(element.Metering, result.Element));
                    return Fitting(atHand, delivery, result, window);
                }),
            ]
        );
    }

    private static FittingElement Fitting(
        ElementAtHand element,
        LogInterval<MassPerRevolution> delivery,
        ElementResult result,
        DisplacementWindow window
    )
    {
        var lowest = result.Corners.MinBy(corner => corner.MeterSpeed.RevolutionsPerSecond)!;
        var highest = result.Corners.MaxBy(corner => corner.MeterSpeed.RevolutionsPerSecond)!;
        return new FittingElement(
            element,
            delivery,
            lowest.MeterSpeed,
            highest.MeterSpeed,
            result.Fits,
            result.TooSlow is null
                ? null
                : result.Element.Limits.Minimum!.Value.RevolutionsPerSecond / lowest.MeterSpeed.RevolutionsPerSecond - 1,
            result.TooFast is null
                ? null
                : highest.MeterSpeed.RevolutionsPerSecond / result.Element.Limits.Maximum!.Value.RevolutionsPerSecond - 1,
            window.Distance(element.Displacement.Value),
            window.Probability(element.Displacement)
        );
    }

    // Without any element the fill efficiency is judged for one that is not known.
    private static IEnumerable<ElementKind?> Kinds(ElementFitQuestion question) =>
        question.Elements.Count == 0 ? [null] : question.Elements.Select(element => element.Kind).Distinct().Order();

    private static IEnumerable<Assumption> OfElements(ElementFitQuestion question) =>
        question
            .Elements.Index()
            .Where(element => element.Item.Displacement.RelativeUncertainty is null)
            .Select(element =>
                ElementDefaults.Displacement.Assumed("displacement/relativeUncertainty") with
                {
                    Member = string.Create(CultureInfo.InvariantCulture, $"elements/{element.Index}/displacement/relativeUncertainty"),
                }
            );
}
