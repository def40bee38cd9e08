using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.MeterSpeeds;

/// <summary>Mass per revolution as it depends on meter speed: constant, or straight between measured points.</summary>
/// <remarks>
/// <para>Outside the measured speeds the value of the nearest point is kept; the answer says so.</para>
/// <para>Formula: k(n) on straight lines between points (n_i, k_i), n in rev/s and k in kg/rev; flow n k(n), kg/s; within a segment k = a +
/// b n, and the speed for a flow is the positive root of b n^2 + a n = flow.</para>
/// <para>Range: speeds and flows at least 0; the flow must rise with the speed, or there is no curve.</para>
/// <para>Source: our own derivation.</para>
/// <para>Accuracy: there and back within 1e-12 relative, nearly constant curves within 1e-13 (DeliveryCurveTests).</para>
/// </remarks>
public sealed class DeliveryCurve
{
    private readonly double[] speeds;
    private readonly double[] values;

    private DeliveryCurve(double[] speeds, double[] values)
    {
        this.speeds = speeds;
        this.values = values;
    }

    /// <summary>Slowest measured speed, rev/s; null for a constant.</summary>
    public double? SlowestMeasured => speeds.Length > 1 ? speeds[0] : null;

    /// <summary>Fastest measured speed, rev/s; null for a constant.</summary>
    public double? FastestMeasured => speeds.Length > 1 ? speeds[^1] : null;

    /// <summary>The same mass per revolution at every speed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not above 0.</exception>
    public static DeliveryCurve Constant(MassPerRevolution value)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(value.KilogramsPerRevolution);
        return new DeliveryCurve([0], [value.KilogramsPerRevolution]);
    }

    /// <summary>Straight lines between measured points.</summary>
    /// <param name="points">Meter speed and mass per revolution, all above 0; speeds differ.</param>
    /// <returns>Null when somewhere a faster meter would deliver less mass per time, so that no single speed gives a rate.</returns>
    /// <exception cref="ArgumentException">No points, a value not above 0, or two points at one speed.</exception>
    public static DeliveryCurve? Through(IEnumerable<(RotationalSpeed Speed, MassPerRevolution Value)> points)
    {
        var ordered = points.OrderBy(point => point.Speed.RevolutionsPerSecond).ToArray();
        if (ordered.Length == 0 || ordered.Any(point => point.Speed.RevolutionsPerSecond <= 0 || point.Value.KilogramsPerRevolution <= 0))
            throw new ArgumentException("At least one point above 0 is needed.", nameof(points));
        double[] speeds = [.. ordered.Select(point => point.Speed.RevolutionsPerSecond)];
        double[] values = [.. ordered.Select(point => point.Value.KilogramsPerRevolution)];
        for (var i = 1; i < speeds.Length; i++)
        {
            if (speeds[i] == speeds[i - 1])
                throw new ArgumentException("Two points at one speed.", nameof(points));
            // n k(n) must rise: its slope k + n dk/dn is linear within a segment, so its ends decide.
            var slope = (values[i] - values[i - 1]) / (speeds[i] - speeds[i - 1]);
            if (values[i - 1] + speeds[i - 1] * slope <= 0 || values[i] + speeds[i] * slope <= 0)
                return null;
        }

        return new DeliveryCurve(speeds, values);
    }

    /// <summary>The largest mass per revolution of the curve.</summary>
    public MassPerRevolution Largest => new(values.Max());

    /// <summary>Mass per revolution at a meter speed, kg per revolution.</summary>
    /// <param name="speed">rev/s, &gt;= 0.</param>
    public double At(double speed)
    {
        if (speed <= speeds[0])
            return values[0];
        for (var i = 1; i < speeds.Length; i++)
        {
            if (speed <= speeds[i])
                return values[i - 1] + (values[i] - values[i - 1]) * (speed - speeds[i - 1]) / (speeds[i] - speeds[i - 1]);
        }

        return values[^1];
    }

    /// <summary>Mass flow at a meter speed, kg/s: n k(n).</summary>
    /// <param name="speed">rev/s, &gt;= 0.</param>
    public double FlowAt(double speed) => speed * At(speed);

    /// <summary>The meter speed that delivers a mass flow: the root of n k(n) = flow, rev/s.</summary>
    /// <param name="flow">kg/s, &gt;= 0.</param>
    /// <remarks>Within a segment k = a + b n, so the root is that of b n^2 + a n = flow; no iteration is needed.</remarks>
    public double SpeedFor(double flow)
    {
        if (flow <= FlowAt(speeds[0]))
            return flow / values[0];
        for (var i = 1; i < speeds.Length; i++)
        {
            if (flow > FlowAt(speeds[i]))
                continue;
            var b = (values[i] - values[i - 1]) / (speeds[i] - speeds[i - 1]);
            var a = values[i] - b * speeds[i];
            // The form that does not cancel when b is small.
            return 2 * flow / (a + Math.Sqrt(a * a + 4 * b * flow));
        }

        return flow / values[^1];
    }
}
