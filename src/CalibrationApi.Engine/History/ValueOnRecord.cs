using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.NewLots;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.ReferenceValues;

namespace CalibrationApi.Engine.History;

/// <summary>A value on record as one that a test is compared with.</summary>
public static class ValueOnRecord
{
    private static Sentence Allowed =>
        $"{new Ratio(PredictedValue.DefaultUncertainty):0.##} were allowed for that; judgement, no published source.";

    /// <summary>Standard uncertainty, relative, of what the last test found, as a value for another day.</summary>
    /// <param name="varianceWithoutSpan">Variance of what it found without that of the scale, relative, &gt;= 0.</param>
    /// <param name="dayToDay">Standard deviation between days, relative, &gt;= 0.</param>
    /// <param name="isOfUnknownLot">It was found with another lot, and nothing says what that changes.</param>
    /// <remarks>
    /// <para>Formula: sqrt(v + d^2 + l^2), with l the usual uncertainty of a predicted value for another lot, otherwise 0.</para>
    /// <para>Range: any variance and deviation that is not negative.</para>
    /// <para>Source: JCGM 100:2008, 5.1.2 (SOURCES.md, key GUM); l is judgement.</para>
    /// <para>Accuracy: 1e-15 against sums by hand (ValueOnRecordTests).</para>
    /// </remarks>
    public static double UncertaintyOfLastTest(double varianceWithoutSpan, double dayToDay, bool isOfUnknownLot)
    {
        var lot = isOfUnknownLot ? PredictedValue.DefaultUncertainty : 0;
        return Math.Sqrt(varianceWithoutSpan + dayToDay * dayToDay + lot * lot);
    }

    /// <summary>What is worth saying of the lot of a value in force; null for the lot of the test.</summary>
    /// <param name="lotOfValue">The lot it was adopted with; null when none was named.</param>
    /// <param name="lotOfTest">The lot of the test; null when none was named.</param>
    public static Finding? OtherLotOfValueInForce(string? lotOfValue, string? lotOfTest) =>
        lotOfValue == lotOfTest
            ? null
            : Finding.Note(
                NewLotCodes.OtherLot,
                lotOfValue is null || lotOfTest is null
                    ? (Sentence)
                        $"The lot is named for only one of this test and the value in force: a change may come from another lot and not from the meter."
                    : $"The value in force was adopted with another lot: a change may come from the product and not from the meter."
            );

    /// <summary>What is worth saying of the lot of the last test; null for the lot of this one.</summary>
    /// <param name="lotOfLast">The lot of the last test; null when none was named.</param>
    /// <param name="lotOfTest">The lot of this one; null when none was named.</param>
    /// <param name="isPredicted">The densities of both lots say what another lot changes.</param>
    public static Finding? OtherLotOfLastTest(string? lotOfLast, string? lotOfTest, bool isPredicted) =>
        lotOfLast == lotOfTest
            ? null
            : Finding.Note(
                NewLotCodes.OtherLot,
                lotOfLast is null || lotOfTest is null
                    ? (Sentence)
                        $"The lot is named for only one of this test and the last one: a change may come from another lot and not from the meter. {Allowed}"
                    : $"The last test was made with another lot: a change may come from the product and not from the meter.{(isPredicted ? $"" : (Sentence)$" {Allowed}")}"
            );

    /// <summary>What is worth saying of a value in force whose test was superseded.</summary>
    public static Finding BasisSuperseded { get; } =
        Finding.Warning(HistoryCodes.BasisSuperseded, $"The value in force rests on a test that has since been superseded.");
}
