using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Catches;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.VolumeChecks;

/// <summary>What is worth saying about a volume check; no verdict, because the element was not tested here.</summary>
internal static class VolumeCheckSentences
{
    // Two units closer than this, such as those of the two bushels, cannot be told apart by a mass per revolution.
    private const double LeastDifference = 0.1;

    public static Sentence Headline(VolumeCheckQuestion question, LogInterval<MassPerRevolution> expected, CheckedValue? compared)
    {
        Sentence first =
            $"Expect about {expected.Median} from {question.Element ?? "this element"}, {expected.Lower} to {expected.Upper} with {new Ratio(question.CoverageProbability ?? CatchTestLimits.DefaultCoverage):0.##} probability.";
        if (compared is null || question.Checked is not { } value)
            return $"{first} Use it to plan a catch, not to seed.";
        Sentence who = question.CheckedIsInForce ? $"The value in force, {value.Value}," : (Sentence)$"The measured {value.Value}";
        return IsTooFull(question)
            ? $"{first} {who} would fill it to {compared.FillEfficiency.Median:F0}, more than it holds."
            : (Sentence)
                $"{first} {who} is {Against(compared.Ratio)} and fills it to {compared.FillEfficiency.Median:F0}{(IsUnusual(question, compared) ? ", which is unusual" : "")}.";
    }

    public static IEnumerable<Finding> Findings(
        VolumeCheckQuestion question,
        double fill,
        LogInterval<MassPerRevolution> expected,
        CheckedValue? compared
    )
    {
        if (OfFill(fill, question.Kind) is { } tooFull)
            yield return tooFull;
        if (compared is null)
            yield break;
        if (IsTooFull(question))
            yield return Finding.Stop(
                ElementCodes.MoreThanTheElementHolds,
                $"{question.Checked!.Value.Value} would need a fill efficiency of {compared.FillEfficiency.Median:F0}; more than {new Ratio(ElementContent.MostFillOf(question.Kind)):F0} is more than {Such(question.Kind)} delivers. {Reason(question, compared, expected)}"
            );
        else if (IsUnusual(question, compared))
            yield return Finding.Warning(
                ElementCodes.FillUnlikeExpected,
                compared.Deviations is { } deviations && Math.Abs(deviations) >= ElementDefaults.Unusual
                    ? (Sentence)
                        $"{question.Checked!.Value.Value} against {expected.Median} expected is {Against(compared.Ratio)}, {Math.Abs(deviations):0.0} standard deviations away. {Reason(question, compared, expected)}"
                    : $"{question.Checked!.Value.Value} fills the element to {compared.FillEfficiency.Median:F0}; more than {new Ratio(ElementDefaults.MostFillEfficiency):F0} is unusual. {Reason(question, compared, expected)}"
            );
    }

    /// <summary>A finding about a fill efficiency that is higher than elements of a kind have; null when it can be.</summary>
    public static Finding? OfFill(double fill, ElementKind? kind)
    {
        var most = ElementContent.MostFillOf(kind);
        if (Threshold.IsAbove(fill, most))
            return Finding.Warning(
                ElementCodes.MoreThanTheElementHolds,
                $"The fill efficiency that this rests on is {new Ratio(fill):F0}. More than {new Ratio(most):F0} is more than {Such(kind)} delivers. Check the numbers that it comes from."
            );
        return Threshold.IsAbove(fill, ElementDefaults.MostFillEfficiency)
            ? Finding.Warning(
                ElementCodes.FillUnlikeExpected,
                $"The fill efficiency that this rests on is {new Ratio(fill):F0}. More than {new Ratio(ElementDefaults.MostFillEfficiency):F0} is unusual. Check the numbers that it comes from."
            )
            : null;
    }

    private static bool IsTooFull(VolumeCheckQuestion question) => Plausibility(question) == MeteringElements.Plausibility.Impossible;

    // Far from what is expected here, or fuller than elements usually are.
    private static bool IsUnusual(VolumeCheckQuestion question, CheckedValue compared) =>
        Math.Abs(compared.Deviations ?? 0) >= ElementDefaults.Unusual
        || (Plausibility(question) == MeteringElements.Plausibility.Unusual && compared.FillEfficiency.Median.Fraction > 1);

    private static Plausibility Plausibility(VolumeCheckQuestion question) =>
        question.Checked is { } value
            ? new ElementContent(question.Displacement, question.Density, question.Kind)
                .Judge(value.Value, value.RelativeUncertainty ?? ElementDefaults.MassPerRevolution.Value.Canonical)
                .Plausibility
            : MeteringElements.Plausibility.Usual;

    private static Sentence Such(ElementKind? kind) =>
        kind switch
        {
            ElementKind.ClosedPockets => $"an element of closed pockets",
            ElementKind.OpenFlutes => $"an open roller",
            ElementKind.Auger => $"an auger",
            _ => $"any element",
        };

    private static Sentence Against(double ratio) =>
        Math.Abs(ratio - 1) < 0.0005 ? (Sentence)$"just that"
        : ratio < 2 ? (Sentence)$"{new Ratio(Math.Abs(ratio - 1)):0.#} {(ratio > 1 ? "above" : "below")} that"
        : $"{ratio:0.#} times that";

    private static Sentence Reason(VolumeCheckQuestion question, CheckedValue compared, LogInterval<MassPerRevolution> expected)
    {
        // A slip is named when it explains most of the difference and leaves one that the spread explains easily; of many, the two
        // that fit best.
        var difference = Math.Abs(Math.Log(compared.Ratio));
        string[] words =
        [
            .. Slips(question.DensityUnit)
                .Select(slip => (slip.Words, Left: Math.Abs(Math.Log(compared.Ratio / slip.Ratio))))
                .Where(slip => slip.Left <= Math.Min(expected.Spread, difference / 3))
                .OrderBy(slip => slip.Left)
                .Select(slip => slip.Words)
                .Take(2),
        ];
        var low =
            compared.Ratio < 1
                ? " A tank that bridges, an element that was not primed or a meter that stood still part of the time also delivers less."
                : "";
        return words.Length > 0
            ? $"It would fit {string.Join(" or ", words)}. Otherwise check that the element, its displacement and the density are those of this product.{low}"
            : (Sentence)
                $"Check that the element, its displacement and the density are those of this product, and the units of all three.{low}";
    }

    // What goes wrong with such numbers, as the ratio of the value to the expected one.
    private static IEnumerable<(double Ratio, string Words)> Slips(Unit? densityUnit)
    {
        var pound = UnitTable.Get("lb").ToSi.Value;
        yield return (1 / pound, "a value in pounds taken as kilograms");
        yield return (pound, "a value in kilograms taken as pounds");
        yield return (1000, "a value in grams taken as kilograms");
        yield return (0.001, "a value in kilograms taken as grams");
        yield return (10, "a slip of the decimal point");
        yield return (0.1, "a slip of the decimal point");
        if (densityUnit is not { } stated)
            yield break;
        foreach (var meant in UnitTable.Of(Dimension.BulkDensity))
        {
            var ratio = meant.ToSi.Value / stated.ToSi.Value;
            if (Math.Abs(Math.Log(ratio)) > LeastDifference)
                yield return (ratio, $"a density in {meant.Symbol} stated as {stated.Symbol}");
        }
    }
}
