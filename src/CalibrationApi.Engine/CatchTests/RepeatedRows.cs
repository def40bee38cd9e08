using CalibrationApi.Engine.Catches;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>Catches whose readings are the same to the last digit: more often one row typed twice than two catches.</summary>
internal static class RepeatedRows
{
    // So often honest catches may agree to the last digit before their doing so says nothing; judgement.
    private const double OrdinaryCoincidence = 0.2;

    /// <summary>
    /// Positions of two catches that count and have the same readings; null when there are none, or when coarse readings make that
    /// ordinary.
    /// </summary>
    /// <remarks>
    /// Two honest masses show the same division with a probability of about d / (2 sqrt(pi) s0 m), the density of their difference at zero;
    /// that, times the number of pairs, has to be small. Equal counts of turns are no coincidence: people stop at the same count.
    /// </remarks>
    public static (int First, int Second)? Of(CatchTestQuestion test, CatchReadings readings)
    {
        var division = test.Scale.Division.Kilograms;
        for (var second = 1; second < readings.Count; second++)
        {
            for (var first = 0; first < second; first++)
            {
                // Told apart by most pairs, and at hand.
                if (readings.Masses[first] != readings.Masses[second])
                    continue;
                var (one, other) = (test.Catches[readings.Positions[first]], test.Catches[readings.Positions[second]]);
                if (one.IndicatedNet != other.IndicatedNet || one.Tare != other.Tare || one.Revolutions != other.Revolutions)
                    continue;
                var coincidence = division / (2 * Math.Sqrt(Math.PI * readings.Believed[first]) * one.IndicatedNet.Kilograms);
                return coincidence * readings.Count * (readings.Count - 1) / 2 <= OrdinaryCoincidence
                    ? (readings.Positions[first], readings.Positions[second])
                    : null;
            }
        }

        return null;
    }
}
