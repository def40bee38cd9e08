using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Repeatability;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>The catches of a test reduced to numbers: masses, ratios, variances. Only those that count enter the arrays.</summary>
internal sealed class CatchReadings
{
    private CatchReadings(int count, RepeatabilityPrior prior)
    {
        Prior = prior;
        Believed = new double[count];
        Masses = new double[count];
        Revolutions = new double[count];
        Values = new double[count];
        Variances = new double[count];
        SpanUncertainties = new double[count];
        TareUncertainties = new double[count];
        Positions = new int[count];
    }

    /// <summary>What is believed about the scatter of a catch: of one size for all, the root of the mean variance.</summary>
    public RepeatabilityPrior Prior { get; private set; }

    /// <summary>Variance believed of the scatter of each catch, relative: s0_i^2, by its own mass and turns where nothing is stated.</summary>
    public double[] Believed { get; }

    /// <summary>Mass metered in each catch, kg: corrected for the scale, scaled to all points.</summary>
    public double[] Masses { get; }

    public double[] Revolutions { get; }

    /// <summary>Mass per revolution of each catch, kg per revolution.</summary>
    public double[] Values { get; }

    /// <summary>Known random variance, relative: v_i = (u_m / m_i)^2 + (u_N / N_i)^2.</summary>
    public double[] Variances { get; }

    /// <summary>Standard uncertainty of the span of the scale at each net load, relative.</summary>
    public double[] SpanUncertainties { get; }

    /// <summary>Standard uncertainty of a shared tare, relative to each net mass.</summary>
    public double[] TareUncertainties { get; }

    /// <summary>Position of each counted catch among all catches of the test.</summary>
    public int[] Positions { get; }

    public int Count => Values.Length;

    /// <summary>The net mass of any catch, counted or not, as metered.</summary>
    public static double MeteredMass(CatchTest test, Catch one) =>
        test.Scale.Corrected(one.IndicatedNet.Kilograms) * (test.CaughtPoints?.Scale ?? 1);

    public static CatchReadings From(CatchTest test)
    {
        var counted = 0;
        foreach (var one in test.Catches)
            counted += one.Counts ? 1 : 0;
        if (counted == 0)
            throw new ArgumentException("At least one catch has to count.", nameof(test));

        var stated = test.Limits.Repeatability;
        var readings = new CatchReadings(counted, RepeatabilityPrior.From(stated, test.Limits.RepeatabilityDegreesOfFreedom, () => RepeatabilityPrior.Default(test.Material, 1, 1)));
        var tareUncertainty = test.Scale.SharedTareUncertainty(test.TareRounding);
        var at = 0;
        for (var position = 0; position < test.Catches.Count; position++)
        {
            var one = test.Catches[position];
            if (!one.Counts)
                continue;
            var weighed = test.Scale.Corrected(one.IndicatedNet.Kilograms);
            var metered = MeteredMass(test, one);
            var revolutions = one.Revolutions.Count;
            var believed = stated ?? RepeatabilityPrior.Default(test.Material, weighed, revolutions).Relative;
            readings.Believed[at] = believed * believed;
            readings.Positions[at] = position;
            readings.Masses[at] = metered;
            readings.Revolutions[at] = revolutions;
            readings.Values[at] = metered / revolutions;
            readings.Variances[at] = CatchVariance.Of(test, one);
            readings.SpanUncertainties[at] = test.Scale.RelativeSpanUncertainty(new Mass(weighed));
            readings.TareUncertainties[at] = tareUncertainty / weighed;
            at++;
        }

        if (stated is null)
            readings.Prior = readings.Prior with { Relative = Math.Sqrt(readings.Believed.Average()) };
        return readings;
    }
}
