namespace CalibrationApi.Simulation.Mistakes;

/// <summary>Factors that the mistakes of weighing share.</summary>
internal static class Units
{
    /// <summary>Kilograms in an international pound, exact.</summary>
    public const double Pound = 0.45359237;
}

/// <summary>Readings in pounds were written down as kilograms.</summary>
public sealed record PoundsAsKilograms : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => 1 / Units.Pound;

    internal override void OnPaper(OneCatch one) => (one.Gross, one.Tare) = (one.Gross / Units.Pound, one.Tare / Units.Pound);
}

/// <summary>Readings in kilograms were written down as pounds.</summary>
public sealed record KilogramsAsPounds : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => Units.Pound;

    internal override void OnPaper(OneCatch one) => (one.Gross, one.Tare) = (one.Gross * Units.Pound, one.Tare * Units.Pound);
}

/// <summary>The empty container was not taken off: a gross mass was written down as a net one, or the scale was not set to zero.</summary>
public sealed record TareNotTakenOff : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => 1 + honest.EmptyReading / honest.Net;

    internal override void OnPaper(OneCatch one) => (one.Gross, one.Tare) = (one.Net + one.EmptyReading, null);
}

/// <summary>The empty container was taken off twice: a net mass was written down as a gross one.</summary>
public sealed record TareTakenOffTwice : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => 1 - honest.EmptyReading / honest.Net;

    internal override void OnPaper(OneCatch one) => one.Gross -= one.EmptyReading;
}

/// <summary>The tare is that of another container.</summary>
/// <param name="Kilograms">What the other container weighs, kg.</param>
public sealed record AnotherContainersTare(double Kilograms) : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => 1 + (honest.EmptyReading - Kilograms) / honest.Net;

    internal override void OnPaper(OneCatch one)
    {
        if (one.Tare is null)
            one.Gross += one.EmptyReading - Kilograms;
        else
            one.Tare = Kilograms;
    }
}

/// <summary>A decimal point slipped in the mass.</summary>
/// <param name="Places">Places to the right; negative to the left.</param>
public sealed record DecimalSlip(int Places) : Mistake
{
    private double Factor => Math.Pow(10, Places);

    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => Factor;

    internal override void OnPaper(OneCatch one) => (one.Gross, one.Tare) = (one.Gross * Factor, one.Tare * Factor);
}
