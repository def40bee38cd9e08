using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Weighing;

/// <summary>Maximum permissible errors of non-automatic weighing instruments.</summary>
/// <remarks>
/// <para>Formula: 0.5 e up to the first step of the class, 1.0 e up to the second, 1.5 e beyond; twice that in service. Loads in
/// verification intervals e.</para>
/// <para>Range: loads from 0; a load on a step belongs to it, also where rounding lifts it a hair above; beyond the largest load the last
/// step holds.</para>
/// <para>Source: OIML R 76-1:2006, 3.5.1 table 6 and 3.5.2 (in service: twice the limit on initial verification); the same limits were read
/// in UK SI 1995/1907, schedule 2, paragraph 4, table 3 (SOURCES.md, keys OIML-R76 and UK-SI-1995-1907). A limit applies to the net load
/// when a tare is taken off.</para>
/// <para>Accuracy: the printed table, entry for entry (OimlR76ReferenceTests); steps, order of the classes and the factor 2 exactly
/// (OimlR76Tests).</para>
/// </remarks>
public static class OimlR76
{
    // Loads in verification intervals up to which 0.5 e and 1.0 e hold, and the largest load of the class.
    private static readonly (double Half, double One, double Largest)[] Steps =
    [
        (50_000, 200_000, double.PositiveInfinity),
        (5_000, 20_000, 100_000),
        (500, 2_000, 10_000),
        (50, 200, 1_000),
    ];

    /// <summary>Limit of error on initial verification, in verification intervals e.</summary>
    /// <param name="accuracyClass">Class on the data plate.</param>
    /// <param name="loadInIntervals">Net load divided by e, &gt;= 0.</param>
    /// <returns>0.5, 1.0 or 1.5. Beyond the largest load of the class the last step is returned; see <see cref="LargestLoad"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The load is negative or not a number.</exception>
    public static double LimitOnVerification(AccuracyClass accuracyClass, double loadInIntervals)
    {
        if (!(loadInIntervals >= 0))
            throw new ArgumentOutOfRangeException(nameof(loadInIntervals), loadInIntervals, "A load of at least 0 is needed.");
        var (half, one, _) = Steps[(int)accuracyClass];
        return !Threshold.IsAbove(loadInIntervals, half) ? 0.5
            : !Threshold.IsAbove(loadInIntervals, one) ? 1.0
            : 1.5;
    }

    /// <summary>Limit of error in service, in verification intervals e: twice the limit on verification.</summary>
    /// <param name="accuracyClass">Class on the data plate.</param>
    /// <param name="loadInIntervals">Net load divided by e, &gt;= 0.</param>
    /// <inheritdoc cref="LimitOnVerification"/>
    public static double LimitInService(AccuracyClass accuracyClass, double loadInIntervals) =>
        2 * LimitOnVerification(accuracyClass, loadInIntervals);

    /// <summary>Largest number of verification intervals an instrument of the class may have.</summary>
    /// <param name="accuracyClass">Class on the data plate.</param>
    public static double LargestLoad(AccuracyClass accuracyClass) => Steps[(int)accuracyClass].Largest;
}
