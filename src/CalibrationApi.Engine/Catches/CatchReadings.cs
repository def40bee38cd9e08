using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;
using CalibrationApi.Engine.Statistics;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Engine.Catches;

/// <summary>What was caught and weighed while a meter, or the wheel that drives meters, turned: reduced to ratios and variances.</summary>
internal sealed class CatchReadings
{
    private CatchReadings(
        ObservedRatios ratios,
        RepeatabilityPrior prior,
        double[] spans,
        double[] tares,
        double sharedTare,
        int[] positions
    )
    {
        Ratios = ratios;
        Prior = prior;
        SpanUncertainties = spans;
        TareUncertainties = tares;
        SharedTare = sharedTare;
        Positions = positions;
    }

    /// <summary>The masses metered, corrected for the scale and scaled to all points, over the revolutions counted.</summary>
    public ObservedRatios Ratios { get; }

    /// <summary>What is believed about the scatter of a catch: of one size for all, the root of the mean variance.</summary>
    public RepeatabilityPrior Prior { get; }

    /// <summary>
    /// Variance believed of the scatter of each catch, relative: s0_i^2, by its own mass and turns where nothing is stated.
    /// </summary>
    public double[] Believed => Ratios.Believed;

    /// <summary>Mass metered in each catch, kg.</summary>
    public double[] Masses => Ratios.Amounts;

    public double[] Revolutions => Ratios.Counts;

    /// <summary>Mass per revolution of each catch, kg per revolution.</summary>
    public double[] Values => Ratios.Values;

    /// <summary>Known random variance, relative: v_i = (u_m / m_i)^2 + (u_N / N_i)^2.</summary>
    public double[] Variances => Ratios.Variances;

    /// <summary>Standard uncertainty of the span of the scale at each net load, relative.</summary>
    public double[] SpanUncertainties { get; }

    /// <summary>Standard uncertainty of a shared tare, relative to each net mass.</summary>
    public double[] TareUncertainties { get; }

    /// <summary>Standard uncertainty of a shared tare, kg metered from all points.</summary>
    public double SharedTare { get; }

    /// <summary>Position of each counted catch among all catches of the test.</summary>
    public int[] Positions { get; }

    public int Count => Values.Length;

    /// <summary>The net mass of any catch, counted or not, as metered.</summary>
    public static double MeteredMass(CatchTestQuestion test, Catch one) =>
        test.Scale.Corrected(one.IndicatedNet.Kilograms) * (test.CaughtPoints?.Scale ?? 1);

    /// <summary>The catches of a test that count.</summary>
    public static CatchReadings From(CatchTestQuestion test)
    {
        var positions = new List<int>(test.Catches.Count);
        var weighed = new List<WeighedTurns>(test.Catches.Count);
        for (var position = 0; position < test.Catches.Count; position++)
        {
            var one = test.Catches[position];
            if (!one.Counts)
                continue;
            positions.Add(position);
            weighed.Add(
                new WeighedTurns(
                    one.IndicatedNet,
                    one.Revolutions.Count,
                    CatchVariance.OfCount(one.Revolutions.Resolution, test.CountStart, test.PocketsPerRevolution)
                )
            );
        }

        if (positions.Count == 0)
            throw new ArgumentException("At least one catch has to count.", nameof(test));
        return Of(
            weighed,
            test.Scale,
            test.TareRounding,
            test.CaughtPoints,
            new BelievedRepeatability(test.Limits.Repeatability, test.Limits.RepeatabilityDegreesOfFreedom, test.Material),
            [.. positions]
        );
    }

    /// <summary>Masses weighed over turns of whatever turned; at least one.</summary>
    /// <param name="weighed">The masses and turns.</param>
    /// <param name="scale">The scale that weighed them.</param>
    /// <param name="tare">How the rounding of the tare enters.</param>
    /// <param name="points">Points caught; null for all.</param>
    /// <param name="repeatability">What is stated of the repeatability.</param>
    /// <param name="positions">Position of each in a longer list; null where it is the whole list.</param>
    public static CatchReadings Of(
        IReadOnlyList<WeighedTurns> weighed,
        Scale scale,
        TareReading tare,
        CaughtPoints? points,
        BelievedRepeatability repeatability,
        int[]? positions = null
    )
    {
        var count = weighed.Count;
        var (masses, turns, variances, believed) = (new double[count], new double[count], new double[count], new double[count]);
        var (spans, tares) = (new double[count], new double[count]);
        var (random, shared, toAllPoints) = (scale.RandomUncertainty(tare), scale.SharedTareUncertainty(tare), points?.Scale ?? 1);
        for (var i = 0; i < count; i++)
        {
            var one = weighed[i];
            var corrected = scale.Corrected(one.IndicatedNet.Kilograms);
            masses[i] = corrected * toAllPoints;
            turns[i] = one.Turns;
            variances[i] = CatchVariance.Of(random / corrected, one.UncertaintyOfTurns / one.Turns);
            believed[i] = repeatability.VarianceOf(corrected, one.Turns);
            spans[i] = scale.RelativeSpanUncertainty(new Mass(corrected));
            tares[i] = shared / corrected;
        }

        var prior = repeatability.Of(believed);
        return new(
            new ObservedRatios(masses, turns, variances, believed, prior.DegreesOfFreedom),
            prior,
            spans,
            tares,
            shared * toAllPoints,
            positions ?? [.. Enumerable.Range(0, count)]
        );
    }
}

/// <summary>A mass that was weighed over turns.</summary>
/// <param name="IndicatedNet">Net mass as the scale showed it.</param>
/// <param name="Turns">Turns counted, above 0.</param>
/// <param name="UncertaintyOfTurns">Standard uncertainty of that count, in turns.</param>
internal readonly record struct WeighedTurns(Mass IndicatedNet, double Turns, double UncertaintyOfTurns);

/// <summary>What is believed of the repeatability of catches, each by its size where nothing is stated.</summary>
/// <param name="Stated">Standard deviation of one catch, relative; null where nothing is stated.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom of what is believed; null for the default.</param>
/// <param name="Material">How the product flows; null when it is not known.</param>
internal readonly record struct BelievedRepeatability(double? Stated, double? DegreesOfFreedom, ProductMaterial? Material)
{
    /// <summary>Variance believed of a catch of this size, relative.</summary>
    public double VarianceOf(double kilograms, double turns)
    {
        var relative = Stated ?? RepeatabilityPrior.DefaultRelative(Material, kilograms, turns);
        return relative * relative;
    }

    /// <summary>One belief for several catches: what was stated, else the root of their mean variance.</summary>
    public RepeatabilityPrior Of(IReadOnlyList<double> variances)
    {
        var material = Material;
        var prior = RepeatabilityPrior.From(Stated, DegreesOfFreedom, () => RepeatabilityPrior.Default(material, 1, 1));
        return Stated is null ? prior with { Relative = Math.Sqrt(variances.Average()) } : prior;
    }
}
