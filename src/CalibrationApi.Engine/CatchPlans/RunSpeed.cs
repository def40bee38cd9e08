using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.CatchPlans;

/// <summary>
/// The ground speed to simulate in a run, where the planned one leaves too short or too long a run or takes a meter beyond its limits.
/// </summary>
/// <remarks>
/// <para>At a ground speed v a meter turns at n = R W v / k and fills a catch of mass m in t = m / (R W v). So each limit of n and each
/// bound on t is a bound on v: n_min k / (R W) and n_max k / (R W) from the limits of the meter; m / (R W t_shortest) above, with the mass
/// m that container, scale and lifting allow; m' / (R W t_longest) below, with m' the mass of a catch that is worth its trouble. All meters
/// of a run share v. Limits of the meters go before the shortest run, and the shortest run before a large catch.</para>
/// <para>The planned speed stays where it keeps all of them. Otherwise the nearest speed that does is taken, some way inside the limits; it
/// is raised only where the highest meter speed is known, and for a larger catch to twice the planned one at most. Source: judgement, no
/// published source. Accuracy: exact, checked in RunSpeedTests.</para>
/// </remarks>
internal static class RunSpeed
{
    /// <summary>The speed for meters that run together.</summary>
    /// <param name="asked">The planned ground speed, above 0.</param>
    /// <param name="meters">The meters as planned at that speed, at least one.</param>
    /// <param name="shortest">Shortest run, s.</param>
    /// <param name="longest">Longest run, s.</param>
    /// <returns>Null when no speed lies inside the limits of all of them.</returns>
    public static Speed? For(Speed asked, IReadOnlyList<MeterPlanning> meters, double shortest, double longest)
    {
        var (slowest, fastest) = Limits(meters);
        if (Threshold.IsAbove(slowest, fastest))
            return null;
        var speed = asked.MetresPerSecond;
        var wanted = Math.Max(speed, meters.Max(meter => meter.WorthwhileMass / (meter.MassPerMetre * longest)));
        wanted = Math.Min(wanted, CatchPlanDefaults.LargestRaise * speed);
        wanted = Math.Min(wanted, meters.Min(meter => meter.LargestMass / (meter.MassPerMetre * shortest)));
        if (wanted > speed && double.IsPositiveInfinity(fastest))
            wanted = speed;
        if (
            !Threshold.IsAbove(wanted, speed)
            && !Threshold.IsBelow(wanted, speed)
            && !Threshold.IsBelow(speed, slowest)
            && !Threshold.IsAbove(speed, fastest)
        )
            return asked;
        var (low, high) = (slowest * CatchPlanDefaults.ClearOfLimits, fastest / CatchPlanDefaults.ClearOfLimits);
        return new Speed(low <= high ? Math.Clamp(wanted, low, high) : Math.Sqrt(slowest * fastest));
    }

    // 0 and infinity without limits.
    private static (double Slowest, double Fastest) Limits(IReadOnlyList<MeterPlanning> meters) =>
        (
            meters.Max(meter => (meter.Limits.Minimum?.RevolutionsPerSecond ?? 0) * meter.MetresPerRevolution),
            meters.Min(meter => (meter.Limits.Maximum?.RevolutionsPerSecond ?? double.PositiveInfinity) * meter.MetresPerRevolution)
        );
}
