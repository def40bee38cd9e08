using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.VolumeChecks;

/// <summary>What is worth saying about a volume check; no verdict, because the element was not tested here.</summary>
internal static class VolumeCheckSentences
{
    // What goes wrong with such numbers, as the ratio of the value to the expected one. Ratios of units are exact.
    private static readonly (double Ratio, string Words)[] Slips =
    [
        (1 / Ratio("lb", "kg"), "a value in pounds taken as kilograms"),
        (Ratio("lb", "kg"), "a value in kilograms taken as pounds"),
        (10, "a slip of the decimal point"),
        (0.1, "a slip of the decimal point"),
        (Ratio("lb/bu-us", "kg/hL"), "a density in lb/bu-us stated as kg/hL"),
        (Ratio("lb/ft3", "kg/hL"), "a density in lb/ft3 stated as kg/hL"),
        (Ratio("lb/ft3", "lb/bu-us"), "a density in lb/ft3 stated as lb/bu-us"),
    ];

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
                $"{question.Checked!.Value.Value} would need a fill efficiency of {compared.FillEfficiency.Median:F0}; more than {new Ratio(VolumeCheckDefaults.MostFillEfficiency):F0} is more than the element holds. {Reason(compared, expected)}");
        else if (IsUnusual(compared))
            yield return Finding.Warning(FindingCode.FillUnlikeExpected,
                $"{question.Checked!.Value.Value} against {expected.Median} expected is {Against(compared.Ratio)}, {Math.Abs(compared.Deviations!.Value):0.0} standard deviations away. {Reason(compared, expected)}");
    }

    private static bool IsTooFull(CheckedValue compared) => Threshold.IsAbove(compared.FillEfficiency.Median.Fraction, VolumeCheckDefaults.MostFillEfficiency);

    private static bool IsUnusual(CheckedValue compared) => Math.Abs(compared.Deviations ?? 0) >= VolumeCheckDefaults.Unusual;

    private static FormattableString Against(double ratio) => Math.Abs(ratio - 1) < 0.0005
        ? (FormattableString)$"just that"
        : ratio < 2
            ? (FormattableString)$"{new Ratio(Math.Abs(ratio - 1)):0.#} {(ratio > 1 ? "above" : "below")} that"
            : $"{ratio:0.#} times that";

    private static FormattableString Reason(CheckedValue compared, LogInterval<MassPerRevolution> expected)
    {
        // A slip is named when it leaves a difference that the spread explains easily.
        var words = Slips.Where(slip => Math.Abs(Math.Log(compared.Ratio / slip.Ratio)) <= expected.Spread).OrderBy(slip => Math.Abs(Math.Log(compared.Ratio / slip.Ratio))).Select(slip => slip.Words).ToArray();
        var low = compared.Ratio < 1 ? " A tank that bridges, an element that was not primed or a meter that stood still part of the time also delivers less." : "";
        return words.Length > 0
            ? $"It would fit {string.Join(" or ", words)}. Otherwise check that the element, its displacement and the density are those of this product.{low}"
            : (FormattableString)$"Check that the element, its displacement and the density are those of this product, and the units of all three.{low}";
    }

    private static double Ratio(string meant, string stated) => UnitTable.Get(meant).ToSi.Value / UnitTable.Get(stated).ToSi.Value;
}
