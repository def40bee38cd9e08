using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.ControllerEntries;

/// <summary>The form in which a controller takes the value.</summary>
public enum ControllerForm
{
    /// <summary>Mass per revolution.</summary>
    MassPerRevolution,

    /// <summary>Mass per a stated number of revolutions.</summary>
    MassPerRevolutions,

    /// <summary>Mass per sensor pulse.</summary>
    MassPerPulse,

    /// <summary>Bulk volume per revolution.</summary>
    VolumePerRevolution,

    /// <summary>Mass per time at a stated meter speed.</summary>
    MassPerTime,
}

/// <summary>How a controller takes the value: its form, unit and number of decimals.</summary>
/// <remarks>
/// <para>Formula: number = k f in the unit of the controller, k in kg/rev: f = 1, revolutions, 1 / pulses, 1 / density or revolutions per
/// second, by form.</para>
/// <para>Range: values, pulses, densities and speeds above 0; 1 to 1000 revolutions; 0 to 9 decimals.</para>
/// <para>Source: common practice, no published source.</para>
/// <para>Accuracy: numbers exactly, what they give back within 1e-12, their errors within 1e-9 (ControllerEntryTests).</para>
/// </remarks>
public sealed record ControllerEntry
{
    /// <summary>Most decimals a controller is believed to take.</summary>
    public const int MostDecimals = 9;

    /// <summary>Most revolutions that one number is believed to stand for.</summary>
    public const int MostRevolutions = 1000;

    private ControllerEntry(ControllerForm form, Unit unit, int decimals, double perRevolution)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(decimals);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(decimals, MostDecimals);
        if (unit.Dimension != DimensionOf(form))
            throw new ArgumentException($"{form} takes a unit of {DimensionOf(form)}, not {unit.Symbol}.", nameof(unit));
        Form = form;
        Unit = unit;
        Decimals = decimals;
        PerRevolution = perRevolution;
    }

    /// <summary>The form.</summary>
    public ControllerForm Form { get; }

    /// <summary>The unit of the number typed in.</summary>
    public Unit Unit { get; }

    /// <summary>Decimals the controller takes, 0 to <see cref="MostDecimals"/>.</summary>
    public int Decimals { get; }

    /// <summary>
    /// The revolutions that one number stands for; null for every form but <see cref="ControllerForm.MassPerRevolutions"/>.
    /// </summary>
    public int? Revolutions { get; private init; }

    // The canonical number typed in is the mass per revolution times this.
    private double PerRevolution { get; }

    /// <summary>The dimension of the number typed in.</summary>
    public static Dimension DimensionOf(ControllerForm form) =>
        form switch
        {
            ControllerForm.MassPerRevolution => Dimension.MassPerRevolution,
            ControllerForm.MassPerRevolutions or ControllerForm.MassPerPulse => Dimension.Mass,
            ControllerForm.VolumePerRevolution => Dimension.Volume,
            ControllerForm.MassPerTime => Dimension.MassPerTime,
            _ => throw new ArgumentOutOfRangeException(nameof(form)),
        };

    /// <summary>Mass per revolution.</summary>
    public static ControllerEntry PerRevolutionOf(Unit unit, int decimals) => new(ControllerForm.MassPerRevolution, unit, decimals, 1);

    /// <summary>Mass per a stated number of revolutions.</summary>
    /// <param name="unit">A unit of mass.</param>
    /// <param name="decimals">Decimals the controller takes.</param>
    /// <param name="revolutions">The revolutions that one number stands for, 1 to <see cref="MostRevolutions"/>.</param>
    public static ControllerEntry PerRevolutionsOf(Unit unit, int decimals, int revolutions)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(revolutions, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(revolutions, MostRevolutions);
        return new(ControllerForm.MassPerRevolutions, unit, decimals, revolutions) { Revolutions = revolutions };
    }

    /// <summary>Mass per sensor pulse.</summary>
    /// <param name="unit">A unit of mass.</param>
    /// <param name="decimals">Decimals the controller takes.</param>
    /// <param name="pulses">Pulses of the sensor in one revolution, above 0.</param>
    public static ControllerEntry PerPulse(Unit unit, int decimals, PulsesPerRevolution pulses) =>
        new(ControllerForm.MassPerPulse, unit, decimals, 1 / pulses.Count);

    /// <summary>Bulk volume per revolution, at the density the controller was told.</summary>
    /// <param name="unit">A unit of volume.</param>
    /// <param name="decimals">Decimals the controller takes.</param>
    /// <param name="density">The density that the controller was told, above 0.</param>
    public static ControllerEntry VolumePerRevolution(Unit unit, int decimals, BulkDensity density) =>
        new(ControllerForm.VolumePerRevolution, unit, decimals, 1 / density.KilogramsPerCubicMetre);

    /// <summary>Mass per time at a stated meter speed.</summary>
    public static ControllerEntry PerTime(Unit unit, int decimals, RotationalSpeed speed) =>
        new(ControllerForm.MassPerTime, unit, decimals, speed.RevolutionsPerSecond);

    /// <summary>The entry of a form, made of what that form needs.</summary>
    /// <param name="form">The form.</param>
    /// <param name="unit">The unit of the number typed in.</param>
    /// <param name="decimals">Decimals the controller takes.</param>
    /// <param name="revolutions">Revolutions that one number stands for; for a mass per revolutions.</param>
    /// <param name="pulses">Pulses of the sensor in one revolution, above 0; for a mass per pulse.</param>
    /// <param name="density">The density that the controller was told, above 0; for a volume per revolution.</param>
    /// <param name="speed">The meter speed at which the value applies, above 0; for a mass per time.</param>
    /// <exception cref="ArgumentNullException">What the form needs is not given.</exception>
    public static ControllerEntry Of(
        ControllerForm form,
        Unit unit,
        int decimals,
        int? revolutions,
        PulsesPerRevolution? pulses,
        BulkDensity? density,
        RotationalSpeed? speed
    ) =>
        form switch
        {
            ControllerForm.MassPerRevolutions => PerRevolutionsOf(
                unit,
                decimals,
                revolutions ?? throw new ArgumentNullException(nameof(revolutions))
            ),
            ControllerForm.MassPerPulse => PerPulse(unit, decimals, pulses ?? throw new ArgumentNullException(nameof(pulses))),
            ControllerForm.VolumePerRevolution => VolumePerRevolution(
                unit,
                decimals,
                density ?? throw new ArgumentNullException(nameof(density))
            ),
            ControllerForm.MassPerTime => PerTime(unit, decimals, speed ?? throw new ArgumentNullException(nameof(speed))),
            _ => PerRevolutionOf(unit, decimals),
        };

    /// <summary>What to type in for a mass per revolution, and what the rounding costs.</summary>
    /// <param name="massPerRevolution">kg per revolution, above 0.</param>
    /// <remarks>
    /// Formula: typed = round(k f, d), half away from zero; error = typed / (k f) - 1. Rounded half away from zero, as people round.
    /// </remarks>
    public ControllerNumber For(double massPerRevolution)
    {
        var exact = Unit.FromCanonical(massPerRevolution * PerRevolution);
        var typed = Math.Round(exact, Decimals, MidpointRounding.AwayFromZero);
        var resulting = Behind(typed);
        return new ControllerNumber(this, typed, resulting.KilogramsPerRevolution / massPerRevolution - 1, resulting);
    }

    /// <summary>The mass per revolution that the controller uses once a number is typed in.</summary>
    /// <param name="typed">The number, in the unit of the entry, above 0.</param>
    /// <remarks>Formula: k = typed / f, in SI units; the inverse of <see cref="For"/> without its rounding.</remarks>
    public MassPerRevolution Behind(double typed) => new(Unit.Canonical(typed) / PerRevolution);

    /// <summary>The mass per revolution of one step of the last digit.</summary>
    /// <remarks>Formula: 10^(-d) / f, in SI units, with d decimals.</remarks>
    public MassPerRevolution Step => Behind(Math.Pow(10, -Decimals));
}

/// <summary>A number for a controller.</summary>
/// <param name="Entry">Form, unit and decimals.</param>
/// <param name="Typed">The number to type in.</param>
/// <param name="RoundingError">Relative error that its resolution causes.</param>
/// <param name="Resulting">The mass per revolution the controller then uses: the value in force once typed in.</param>
public sealed record ControllerNumber(ControllerEntry Entry, double Typed, double RoundingError, MassPerRevolution Resulting)
{
    /// <summary>
    /// The number with its unit and what it is for: a mass alone would not say how many revolutions it is for.
    /// </summary>
    public string InWords =>
        Entry.Form switch
        {
            ControllerForm.MassPerRevolutions when Entry.Revolutions is > 1 => FormattableString.Invariant(
                $"{this} per {Entry.Revolutions} revolutions"
            ),
            ControllerForm.MassPerPulse => $"{this} per pulse",
            ControllerForm.MassPerRevolutions or ControllerForm.VolumePerRevolution => $"{this} per revolution",
            _ => ToString(),
        };

    /// <summary>The number with its unit, as it is typed.</summary>
    public override string ToString() =>
        string.Create(
            System.Globalization.CultureInfo.InvariantCulture,
            $"{Typed.ToString("F" + Entry.Decimals, System.Globalization.CultureInfo.InvariantCulture)} {Entry.Unit.Symbol}"
        );
}
