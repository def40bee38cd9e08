using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.VolumeChecks;

/// <summary>What is worth saying about a volume check; no verdict, because the element was not tested here.</summary>
internal static class VolumeCheckSentences
{
    // Two units closer than this, such as those of the two bushels, cannot be told apart by a mass per revolution.
    private const double LeastDifference = 0.1;

    public static FormattableString Headline(VolumeCheckQuestion question, LogInterval<MassPerRevolution> expected, CheckedValue? compared)
    {
        FormattableString first = $"Expect about {expected.Median} from {question.Element ?? "this element"}, {expected.Lower} to {expected.Upper} with {new Ratio(question.CoverageProbability ?? CatchTestLimits.DefaultCoverage):0.##} probability.";
        if (compared is null || question.Checked is not { } value)
            return $"{first} Use it to plan a catch, not to seed.";
        FormattableString who = question.CheckedIsInForce ? $"The value in force, {value.Value}," : (FormattableString)$"The measured {value.Value}";
        return IsTooFull(compared)
            ? $"{first} {who} would fill it to {compared.FillEfficiency.Median:F0}, more than it holds."
            : (FormattableString)$"{first} {who} is {Against(compared.Ratio)} and fills it to {compared.FillEfficiency.Median:F0}{(IsUnusual(compared) ? ", which is unusual" : "")}.";
    }

    public static IEnumerable<Finding> Findings(VolumeCheckQuestion question, double fill, LogInterval<MassPerRevolution> expected, CheckedValue? compared)
    {
        if (fill > VolumeCheckDefaults.MostFillEfficiency)
            yield return Finding.Warning(FindingCode.MoreThanTheElementHolds,
                $"The fill efficiency that this rests on is {new Ratio(fill):F0}. More than {new Ratio(VolumeCheckDefaults.MostFillEfficiency):F0} is more than an element holds. Check the numbers that it comes from.");
        if (compared is null)
            yield break;
        if (IsTooFull(compared))
            yield return Finding.Warning(FindingCode.MoreThanTheElementHolds,
                $"{question.Checked!.Value.Value} would need a fill efficiency of {compared.FillEfficiency.Median:F0}; more than {new Ratio(VolumeCheckDefaults.MostFillEfficiency):F0} is more than the element holds. {Reason(question, compared, expected)}");
        else if (IsUnusual(compared))
            yield return Finding.Warning(FindingCode.FillUnlikeExpected,
                $"{question.Checked!.Value.Value} against {expected.Median} expected is {Against(compared.Ratio)}, {Math.Abs(compared.Deviations!.Value):0.0} standard deviations away. {Reason(question, compared, expected)}");
    }

    private static bool IsTooFull(CheckedValue compared) => Threshold.IsAbove(compared.FillEfficiency.Median.Fraction, VolumeCheckDefaults.MostFillEfficiency);

    private static bool IsUnusual(CheckedValue compared) => Math.Abs(compared.Deviations ?? 0) >= VolumeCheckDefaults.Unusual;

    private static FormattableString Against(double ratio) => Math.Abs(ratio - 1) < 0.0005
        ? (FormattableString)$"just that"
        : ratio < 2
            ? (FormattableString)$"{new Ratio(Math.Abs(ratio - 1)):0.#} {(ratio > 1 ? "above" : "below")} that"
            : $"{ratio:0.#} times that";

    private static FormattableString Reason(VolumeCheckQuestion question, CheckedValue compared, LogInterval<MassPerRevolution> expected)
    {
        // A slip is named when it explains most of the difference and leaves one that the spread explains easily; of many, the two
        // that fit best.
        var difference = Math.Abs(Math.Log(compared.Ratio));
        string[] words = [.. Slips(question.DensityUnit)
            .Select(slip => (slip.Words, Left: Math.Abs(Math.Log(compared.Ratio / slip.Ratio))))
            .Where(slip => slip.Left <= Math.Min(expected.Spread, difference / 3))
            .OrderBy(slip => slip.Left)
            .Select(slip => slip.Words)
            .Take(2)];
        var low = compared.Ratio < 1 ? " A tank that bridges, an element that was not primed or a meter that stood still part of the time also delivers less." : "";
        return words.Length > 0
            ? $"It would fit {string.Join(" or ", words)}. Otherwise check that the element, its displacement and the density are those of this product.{low}"
            : (FormattableString)$"Check that the element, its displacement and the density are those of this product, and the units of all three.{low}";
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
