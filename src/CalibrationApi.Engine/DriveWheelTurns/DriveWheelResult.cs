using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Uncertainty;

namespace CalibrationApi.Engine.DriveWheelTurns;

/// <summary>Turns, expected catches, and what turn tests say.</summary>
public sealed record DriveWheelResult
{
    /// <summary>One or two sentences that a tired person understands.</summary>
    public required Sentence Headline { get; init; }

    /// <summary>What to do about the setting.</summary>
    public required DriveWheelVerdict Verdict { get; init; }

    /// <summary>Why.</summary>
    public required IReadOnlyList<Finding> Reasons { get; init; }

    /// <summary>The wheel as used.</summary>
    public required DriveWheel Wheel { get; init; }

    /// <summary>Where its circumference comes from.</summary>
    public required WheelOrigin Origin { get; init; }

    /// <summary>For each area asked for, in that order.</summary>
    public required IReadOnlyList<TurnsForArea> Turns { get; init; }

    /// <summary>Mass that a turn has to deliver for the target rate; null without one.</summary>
    public MassPerRevolution? NeededPerTurn { get; init; }

    /// <summary>The same for a revolution of the meter; null without gearing.</summary>
    public MassPerRevolution? NeededPerMeterRevolution { get; init; }

    /// <summary>
    /// Meter revolutions per turn that the stated mass per revolution needs for the target rate; null without one of the two.
    /// </summary>
    public double? NeededMeterRevolutionsPerTurn { get; init; }

    /// <summary>Rate that the stated mass per revolution of the meter gives; null without one or without gearing.</summary>
    public MassPerArea? RateOfStatedMeter { get; init; }

    /// <summary>Rate of the turn tests, kg/m2, with its uncertainty; null without a test.</summary>
    public MeasuredValue? Rate { get; init; }

    /// <summary>Each turn test.</summary>
    public required IReadOnlyList<EvaluatedTurnTest> Tests { get; init; }

    /// <summary>The rate against its target; null without a test or a target.</summary>
    public RateAcceptance? Acceptance { get; init; }

    /// <summary>What keeps any number of such tests from showing that the rate is within tolerance; null when nothing does.</summary>
    public TestObstacle? Obstacle { get; init; }

    /// <summary>What would bring the rate to its target; null without a test or a target.</summary>
    public SettingCorrection? Correction { get; init; }

    /// <summary>Outlets that were weighed one by one, over all tests; empty when they were not.</summary>
    public required IReadOnlyList<OutletCatch> Outlets { get; init; }

    /// <summary>Largest acceptable deviation.</summary>
    public required double Tolerance { get; init; }

    /// <summary>Values used that the caller did not state, with origin.</summary>
    public required IReadOnlyList<Assumption> Assumptions { get; init; }

    /// <summary>What the engine noticed.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}

/// <summary>Turns for an area, and what has to fall meanwhile.</summary>
/// <param name="Area">The area.</param>
/// <param name="Distance">Distance that the machine drives over it.</param>
/// <param name="Turns">Turns of the wheel.</param>
/// <param name="WholeTurns">The nearest whole number of turns, at least 1.</param>
/// <param name="MeterRevolutions">Revolutions of the meter; null without gearing.</param>
/// <param name="Total">Mass from all outlets at the target rate; null without one.</param>
/// <param name="PerOutlet">Mass from each outlet; null without outlets or target.</param>
/// <param name="TotalOfWholeTurns">Mass from all outlets in whole turns; null without a target.</param>
/// <param name="PerOutletOfWholeTurns">Mass from each outlet in whole turns; null without outlets or target.</param>
public sealed record TurnsForArea(
    Area Area,
    Length Distance,
    double Turns,
    long WholeTurns,
    double? MeterRevolutions,
    Mass? Total,
    Mass? PerOutlet,
    Mass? TotalOfWholeTurns,
    Mass? PerOutletOfWholeTurns
);

/// <summary>One turn test as evaluated.</summary>
/// <param name="Turns">Turns of the wheel.</param>
/// <param name="Area">Area that the machine would have worked meanwhile.</param>
/// <param name="Metered">Mass from all outlets, those not caught included.</param>
/// <param name="Rate">Mass over area.</param>
public sealed record EvaluatedTurnTest(double Turns, Area Area, Mass Metered, MassPerArea Rate);

/// <summary>What all turn tests have in common and do not average out.</summary>
public enum TestObstacle
{
    /// <summary>Outlets that were not caught.</summary>
    Outlets,

    /// <summary>The circumference of the wheel.</summary>
    Wheel,

    /// <summary>The error of the scale.</summary>
    Scale,
}

/// <summary>The rate against its target.</summary>
/// <param name="Deviation">Rate over target, less 1, with its interval.</param>
/// <param name="Within">The rate found is within the tolerance of the target.</param>
/// <param name="Probability">Probability that the true rate is.</param>
public sealed record RateAcceptance(MeasuredValue Deviation, bool Within, double Probability);

/// <summary>What would bring the rate to its target if the rate were proportional to the setting.</summary>
/// <param name="Factor">Target over rate found.</param>
/// <param name="Setting">Setting times that factor; null when no setting is stated.</param>
/// <param name="MeterRevolutionsPerTurn">Gearing times that factor; null when none is stated.</param>
public sealed record SettingCorrection(double Factor, double? Setting, double? MeterRevolutionsPerTurn)
{
    /// <summary>What the setting would have to be.</summary>
    /// <param name="target">Target rate, above 0.</param>
    /// <param name="found">Rate found, above 0.</param>
    /// <param name="setting">Setting used.</param>
    /// <param name="gearing">Meter revolutions per turn used.</param>
    /// <remarks>
    /// <para>Formula: new setting = old setting R_target / R_found, and so for the gearing. Assumes that the rate is proportional to the
    /// setting, which holds for gears and about holds for the open length of a fluted roller, not for gates; and that it is zero at a
    /// setting of zero. A first step only: test again.</para>
    /// <para>Range: rates above 0; null where no setting or gearing is stated.</para>
    /// <para>Source: common practice, no published source.</para>
    /// <para>Accuracy: 1e-9 relative (DriveWheelEvaluationTests).</para>
    /// </remarks>
    public static SettingCorrection Of(MassPerArea target, MassPerArea found, double? setting = null, double? gearing = null)
    {
        var factor = target.KilogramsPerSquareMetre / found.KilogramsPerSquareMetre;
        return new(factor, setting * factor, gearing * factor);
    }
}

/// <summary>What fell from one outlet over all tests.</summary>
/// <param name="Caught">Net mass.</param>
/// <param name="Deviation">From the mean of the outlets, relative.</param>
/// <param name="Within">The deviation is within the limit.</param>
public sealed record OutletCatch(Mass Caught, double Deviation, bool Within)
{
    /// <summary>Nothing fell from it.</summary>
    public bool GaveNothing => Caught.Kilograms == 0;

    /// <summary>Compares outlets with their mean.</summary>
    /// <param name="outlets">Net mass of each, the sum above 0.</param>
    /// <param name="limit">Largest acceptable deviation, relative.</param>
    /// <remarks>
    /// <para>Formula: deviation m_i / mean - 1; within when |deviation| is at most the limit.</para>
    /// <para>Range: masses at least 0 with a sum above 0; a deviation on the limit is within it.</para>
    /// <para>Source: University of Georgia Extension, each outlet within 5 % of the average (SOURCES.md, keys UGA-FA and
    /// FIELD-2007).</para>
    /// <para>Accuracy: 1e-9 relative (DriveWheelEvaluationTests); a published drill as printed, or the table of cases says why not
    /// (CatchDistanceTradeTests).</para>
    /// </remarks>
    public static IReadOnlyList<OutletCatch> Compare(IReadOnlyList<Mass> outlets, double limit)
    {
        var mean = outlets.Average(mass => mass.Kilograms);
        return
        [
            .. outlets.Select(mass =>
            {
                var deviation = mass.Kilograms / mean - 1;
                return new OutletCatch(mass, deviation, !Threshold.IsAbove(Math.Abs(deviation), limit));
            }),
        ];
    }
}
