using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.MeterSpeeds;

/// <summary>Several products in one air stream: the fan settings that suit all of them, and what each cubic metre of air carries.</summary>
/// <remarks>
/// <para>The limits are the caller's; no fan, line or outlet is modelled here. Formula: what all products allow is the highest of their
/// minima to the lowest of their maxima. A cubic metre of air carries sum(R W v) over the air flow. Units: rates kg/m2, widths m, speeds
/// m/s, air m3/s.</para>
/// <para>Range: at least one product with a rate above 0 and one ground speed; a limit that is not stated does not bind.</para>
/// <para>Source: our own derivation; 10 % of room is judgement.</para>
/// <para>Accuracy: 1e-12 relative for flows and loads, windows exactly (FanEvaluationTests).</para>
/// </remarks>
public static class FanEvaluation
{
    // Less than 10 % of room is worth a word, as with the limits of a meter; judgement, no published source.
    private const double Near = 1.10;

    /// <summary>Evaluates <paramref name="question"/>.</summary>
    /// <param name="question">The products and the plan.</param>
    /// <param name="groundSpeeds">Ground speeds, at least one.</param>
    /// <exception cref="ArgumentException">No product or no ground speed.</exception>
    public static FanResult Evaluate(FanQuestion question, IReadOnlyList<Speed> groundSpeeds)
    {
        if (question.Products.Count == 0 || groundSpeeds.Count == 0)
            throw new ArgumentException("A product and a ground speed are needed.", nameof(question));
        var speeds = Common(question.Products.Select(product => (product.Name, product.FanSpeed)));
        var flows = Common(question.Products.Select(product => (product.Name, product.AirFlow)));
        return new FanResult
        {
            FanSpeeds = speeds,
            AirFlows = flows,
            Loads = [.. Loads(question, groundSpeeds)],
            Headline = Headline(speeds, flows),
            Findings =
            [
                .. Findings(speeds, question.FanSpeed, "fan speed", "fanSpeed"),
                .. Findings(flows, question.AirFlow, "air flow", "airFlow"),
            ],
        };
    }

    // The highest minimum to the lowest maximum; null when none is stated.
    private static CommonWindow<T>? Common<T>(IEnumerable<(string Name, StatedLimits<T> Limits)> products)
        where T : struct, IQuantity<T>
    {
        var all = products.ToArray();
        var lowest = all.Where(one => one.Limits.Minimum is not null)
            .OrderByDescending(one => one.Limits.Minimum!.Value.Canonical)
            .FirstOrDefault();
        var highest = all.Where(one => one.Limits.Maximum is not null).OrderBy(one => one.Limits.Maximum!.Value.Canonical).FirstOrDefault();
        return lowest.Name is null && highest.Name is null
            ? null
            : new CommonWindow<T>(lowest.Limits.Minimum, lowest.Name, highest.Limits.Maximum, highest.Name);
    }

    private static IEnumerable<AirLoad> Loads(FanQuestion question, IReadOnlyList<Speed> groundSpeeds)
    {
        Speed[] ends =
        [
            .. new[] { groundSpeeds.MinBy(speed => speed.MetresPerSecond), groundSpeeds.MaxBy(speed => speed.MetresPerSecond) }.Distinct(),
        ];
        var varies = question.Products.Any(product => Rate(product, highest: true) != Rate(product, highest: false));
        foreach (var highest in varies ? new[] { false, true } : [true])
        {
            foreach (var speed in ends)
            {
                (string Name, CarriedMass Carried)[] products =
                [
                    .. question.Products.Select(product =>
                        (
                            product.Name,
                            Carried(Rate(product, highest) * product.CoveredWidth.Metres * speed.MetresPerSecond, question.AirFlow)
                        )
                    ),
                ];
                yield return new AirLoad(
                    speed,
                    highest,
                    Carried(products.Sum(one => one.Carried.Flow.KilogramsPerSecond), question.AirFlow),
                    products
                );
            }
        }
    }

    // A rate of zero means off and is no corner.
    private static double Rate(CarriedProduct product, bool highest)
    {
        var rates = product.Rates.Select(rate => rate.KilogramsPerSquareMetre).Where(rate => rate > 0);
        return highest ? rates.Max() : rates.Min();
    }

    private static CarriedMass Carried(double flow, VolumeFlow? air) =>
        new(new MassFlow(flow), air is { } known ? new BulkDensity(flow / known.CubicMetresPerSecond) : null);

    private static Sentence Headline(CommonWindow<RotationalSpeed>? speeds, CommonWindow<VolumeFlow>? flows) =>
        (speeds, flows) switch
        {
            (null, null) => $"No limits of the fan are stated.",
            ({ Exists: false }, _) or (_, { Exists: false }) => $"No setting of the fan suits all products.",
            (not null, null) => $"Keep the fan at {Range(speeds)}.",
            (null, not null) => $"Keep the air flow at {Range(flows)}.",
            _ => $"Keep the fan at {Range(speeds)} and the air flow at {Range(flows)}.",
        };

    private static Sentence Range<T>(CommonWindow<T> window)
        where T : struct, IQuantity<T> =>
        (window.Minimum, window.Maximum) switch
        {
            ({ } minimum, { } maximum) => minimum.Equals(maximum) ? $"{minimum}" : (Sentence)$"{minimum} to {maximum}",
            ({ } minimum, null) => $"{minimum} or more",
            _ => $"{window.Maximum!.Value} or less",
        };

    private static IEnumerable<Finding> Findings<T>(CommonWindow<T>? window, T? planned, string what, string member)
        where T : struct, IQuantity<T>
    {
        if (window is null)
            yield break;
        if (!window.Exists)
        {
            yield return Finding.Warning(
                MeterSpeedCodes.NoCommonFanWindow,
                window.MinimumOf == window.MaximumOf
                    ? (Sentence)
                        $"{window.MinimumOf} needs a {what} of at least {window.Minimum!.Value} and at most {window.Maximum!.Value}, which cannot both be."
                    : (Sentence)
                        $"{window.MinimumOf} needs a {what} of at least {window.Minimum!.Value}, but {window.MaximumOf} allows at most {window.Maximum!.Value}. One air stream cannot carry both."
            );
        }

        if (planned is not { } plan)
        {
            yield return Finding.Note(
                MeterSpeedCodes.FanLimitNotChecked,
                $"Limits of the {what} are stated, but no planned {what}. Add {member} to the fan to have it checked."
            );
            yield break;
        }

        var under = window.Minimum is { } minimum && Threshold.IsBelow(plan.Canonical, minimum.Canonical);
        var over = window.Maximum is { } maximum && Threshold.IsAbove(plan.Canonical, maximum.Canonical);
        if (under)
            yield return Finding.Warning(
                MeterSpeedCodes.OutsideFanWindow,
                $"The planned {what} of {plan} is under the least for {window.MinimumOf}, {window.Minimum!.Value}: product can settle in the lines and block them."
            );
        if (over)
            yield return Finding.Warning(
                MeterSpeedCodes.OutsideFanWindow,
                $"The planned {what} of {plan} is above the highest for {window.MaximumOf}, {window.Maximum!.Value}: it can be damaged, or bounce out of the row."
            );
        if (!under && !over && NearSentence(window, plan, what) is { } near)
            yield return Finding.Note(MeterSpeedCodes.NearFanLimit, near);
    }

    private static Sentence? NearSentence<T>(CommonWindow<T> window, T plan, string what)
        where T : struct, IQuantity<T>
    {
        var nearLeast = window.Minimum is { } least && Threshold.IsBelow(plan.Canonical, Near * least.Canonical);
        var nearMost = window.Maximum is { } most && Threshold.IsAbove(Near * plan.Canonical, most.Canonical);
        return (nearLeast, nearMost) switch
        {
            (true, true) =>
                $"The planned {what} of {plan} leaves less than 10 % on both sides: {window.MinimumOf} needs at least {window.Minimum!.Value}, {window.MaximumOf} at most {window.Maximum!.Value}.",
            (true, false) => $"The planned {what} of {plan} is within 10 % of the least for {window.MinimumOf}, {window.Minimum!.Value}.",
            (false, true) => $"The planned {what} of {plan} is within 10 % of the highest for {window.MaximumOf}, {window.Maximum!.Value}.",
            _ => null,
        };
    }
}
