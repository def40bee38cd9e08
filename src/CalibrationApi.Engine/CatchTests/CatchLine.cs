using CalibrationApi.Engine.Catches;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>A straight line through the catches: against their order it is a trend, against 1/N it is an additive offset.</summary>
/// <param name="Slope">Slope, kg per revolution per unit of the abscissa.</param>
/// <param name="StandardUncertainty">Its standard uncertainty.</param>
/// <param name="DegreesOfFreedom">nu0 + c - 2.</param>
internal readonly record struct CatchLine(double Slope, double StandardUncertainty, double DegreesOfFreedom)
{
    private const int MostSteps = 60;

    /// <summary>Weighted least squares of k on x with the between-catch variance taken from the residuals and the prior.</summary>
    /// <param name="readings">The catches, at least two.</param>
    /// <param name="abscissa">x of each catch; not all equal.</param>
    /// <remarks>Because m = a + k N divided by N is k_i = k + a / N_i, the intercept a is the slope against 1/N.</remarks>
    public static CatchLine Fit(CatchReadings readings, ReadOnlySpan<double> abscissa)
    {
        var degreesOfFreedom = readings.Prior.DegreesOfFreedom + readings.Count - 2;
        var scatter = 1.0;
        var line = default((double Slope, double Mean, double Sxx, double Residuals));
        for (var step = 0; step < MostSteps; step++)
        {
            line = Solve(readings, abscissa, scatter);
            // Fixed point of the same estimating equation as in PooledRatio, with one more parameter fitted.
            var next = (readings.Prior.DegreesOfFreedom + line.Residuals * scatter) / degreesOfFreedom;
            var settled = Math.Abs(next - scatter) <= 1e-12 * scatter;
            scatter = next;
            if (settled)
                break;
        }

        return new CatchLine(line.Slope, line.Mean / Math.Sqrt(line.Sxx), degreesOfFreedom);
    }

    private static (double Slope, double Mean, double Sxx, double Residuals) Solve(
        CatchReadings readings,
        ReadOnlySpan<double> abscissa,
        double scatter
    )
    {
        var (values, variances, believed) = (readings.Values, readings.Variances, readings.Believed);
        double sw = 0,
            sx = 0,
            sy = 0;
        for (var i = 0; i < values.Length; i++)
        {
            var w = 1 / (scatter * believed[i] + variances[i]);
            sw += w;
            sx += w * abscissa[i];
            sy += w * values[i];
        }

        var (meanX, meanY) = (sx / sw, sy / sw);
        double sxx = 0,
            sxy = 0;
        for (var i = 0; i < values.Length; i++)
        {
            var w = 1 / (scatter * believed[i] + variances[i]);
            sxx += w * (abscissa[i] - meanX) * (abscissa[i] - meanX);
            sxy += w * (abscissa[i] - meanX) * (values[i] - meanY);
        }

        var slope = sxy / sxx;
        var residuals = 0.0;
        for (var i = 0; i < values.Length; i++)
        {
            var residual = (values[i] - meanY - slope * (abscissa[i] - meanX)) / meanY;
            residuals += residual * residual / (scatter * believed[i] + variances[i]);
        }

        return (slope, meanY, sxx, residuals);
    }
}
