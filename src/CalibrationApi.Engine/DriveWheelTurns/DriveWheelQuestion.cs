using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;
using CalibrationApi.Engine.Wheels;

namespace CalibrationApi.Engine.DriveWheelTurns;

/// <summary>A ground-driven machine, and what fell while its drive wheel was turned.</summary>
public sealed record DriveWheelQuestion
{
    /// <summary>The drive wheel.</summary>
    public required WheelMeasure Wheel { get; init; }

    /// <summary>Working width, above 0.</summary>
    public required Length Width { get; init; }

    /// <summary>Outlets over that width; null when not stated.</summary>
    public int? Outlets { get; init; }

    /// <summary>Share of its turns that the wheel lacks in the field, below 1; null takes the default.</summary>
    public double? Skid { get; init; }

    /// <summary>Areas for which turns are wanted.</summary>
    public IReadOnlyList<Area> Areas { get; init; } = [];

    /// <summary>The rate to be put down, above 0; null when not stated.</summary>
    public MassPerArea? TargetRate { get; init; }

    /// <summary>Meter revolutions per turn of the wheel; null when not stated.</summary>
    public double? MeterRevolutionsPerTurn { get; init; }

    /// <summary>Mass per revolution of the meter over the whole width, where known; needs the gearing or the target rate.</summary>
    public MassPerRevolution? MassPerRevolution { get; init; }

    /// <summary>Turn tests, all with one setting.</summary>
    public IReadOnlyList<TurnTest> Tests { get; init; } = [];

    /// <summary>Outlets that were caught, the same ones each time; null for all.</summary>
    public int? OutletsCaught { get; init; }

    /// <summary>Standard deviation between outlets, relative; null takes that of the outlets weighed apart, or the default.</summary>
    public double? OutletSpread { get; init; }

    /// <summary>The scale that weighed them; null when not stated: rounding is then left out.</summary>
    public Scale? Scale { get; init; }

    /// <summary>Smallest step of the count of turns; null takes the default.</summary>
    public Revolutions? TurnResolution { get; init; }

    /// <summary>The setting used, on the machine's own marks, above 0; null when not stated.</summary>
    public double? Setting { get; init; }

    /// <summary>Largest acceptable deviation, relative; null takes the default.</summary>
    public double? Tolerance { get; init; }

    /// <summary>Repeatability of one test, relative; null takes the default of a catch of that size.</summary>
    public double? Repeatability { get; init; }

    /// <summary>Degrees of freedom of that repeatability.</summary>
    public double? RepeatabilityDegreesOfFreedom { get; init; }
}

/// <summary>How the rolling circumference of a wheel is known.</summary>
/// <param name="Circumference">The circumference, above 0.</param>
/// <param name="Origin">Where it comes from.</param>
/// <param name="RelativeUncertainty">Its standard uncertainty, relative; null takes the default.</param>
public sealed record WheelMeasure(Length Circumference, WheelOrigin Origin, double? RelativeUncertainty = null)
{
    /// <summary>Reckoned from the diameter of the wheel: pi D, an assumption because a loaded tyre rolls shorter.</summary>
    /// <param name="diameter">Diameter D, above 0.</param>
    /// <param name="relativeUncertainty">Standard uncertainty, relative; null takes the default.</param>
    public static WheelMeasure OfDiameter(Length diameter, double? relativeUncertainty = null) =>
        new(RollingWheel.OfDiameter(diameter), WheelOrigin.Diameter, relativeUncertainty);

    /// <summary>Measured: distance over turns.</summary>
    /// <param name="distance">Distance rolled, above 0.</param>
    /// <param name="turns">Turns counted, above 0.</param>
    /// <param name="relativeUncertainty">Standard uncertainty, relative; null takes the default.</param>
    public static WheelMeasure OfRun(Length distance, double turns, double? relativeUncertainty = null) =>
        new(RollingWheel.Circumference(distance, turns), WheelOrigin.MeasuredRun, relativeUncertainty);
}

/// <summary>Where the circumference of a wheel comes from.</summary>
public enum WheelOrigin
{
    /// <summary>Stated as measured.</summary>
    Circumference,

    /// <summary>Distance over turns of a measured run.</summary>
    MeasuredRun,

    /// <summary>Reckoned from the diameter.</summary>
    Diameter,
}

/// <summary>One turn test: the wheel was turned, and what fell was weighed.</summary>
/// <param name="Turns">Turns of the wheel, above 0.</param>
/// <param name="Caught">Net mass from all outlets that were caught, above 0.</param>
/// <param name="PerOutlet">Net masses outlet by outlet, all above or equal 0; empty when they were weighed together.</param>
public sealed record TurnTest(double Turns, Mass Caught, IReadOnlyList<Mass> PerOutlet)
{
    /// <summary>A test whose outlets were weighed together.</summary>
    public static TurnTest Together(double turns, Mass caught) => new(turns, caught, []);

    /// <summary>A test whose outlets were weighed one by one.</summary>
    /// <param name="turns">Turns of the wheel, above 0.</param>
    /// <param name="outlets">Net mass of each outlet, at least 0.</param>
    /// <remarks>
    /// <para>Formula: caught = sum of the outlets, kg.</para>
    /// <para>Range: at least one outlet above 0.</para>
    /// <para>Source: common practice, no published source.</para>
    /// <para>Accuracy: the sum of doubles in the order given (DriveWheelEvaluationTests).</para>
    /// </remarks>
    public static TurnTest Apart(double turns, IReadOnlyList<Mass> outlets) =>
        new(turns, new Mass(outlets.Sum(mass => mass.Kilograms)), outlets);
}
