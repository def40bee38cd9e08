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

/// <summary>The empty container was not taken off: a tare of zero was written down beside the gross mass.</summary>
public sealed record TareTypedAsZero : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => 1 + honest.EmptyReading / honest.Net;

    internal override void OnPaper(OneCatch one) => (one.Gross, one.Tare) = (one.Net + one.EmptyReading, 0);
}

/// <summary>The container was not emptied: it still holds the catch before.</summary>
public sealed record ContainerNotEmptied : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest)
    {
        var shown = honest.Net;
        for (var before = honest.Before; before is not null; before = OnlyIn is null ? before.Before : null)
            shown += before.Net;
        return shown / honest.Net;
    }

    internal override void OnPaper(OneCatch one) => one.Gross += one.Before?.Net ?? 0;
}

/// <summary>Product was left in the container after the first catch.</summary>
/// <param name="Kilograms">How much, kg.</param>
public sealed record ResidueLeft(double Kilograms) : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => honest.Before is null ? 1 : 1 + Kilograms / honest.Net;

    internal override void OnPaper(OneCatch one) => one.Gross += one.Before is null ? 0 : Kilograms;
}

/// <summary>Wind or a hand carried part of the full container.</summary>
/// <param name="Share">Share of the net mass that the scale did not see.</param>
public sealed record WindOrHand(double Share) : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => 1 - Share;

    internal override void OnPaper(OneCatch one) => one.Gross -= Share * one.Net;
}

/// <summary>A scale that shows pounds and ounces was read: 12 lb 8 oz was written down as 12.8 lb.</summary>
public sealed record OuncesTypedAsDecimals : Mistake
{
    private const int OuncesPerPound = 16;
    private const int FirstOfTwoDigits = 10;

    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => (Typed(honest.Gross) - Typed(honest.Tare ?? 0)) / honest.Net;

    internal override void OnPaper(OneCatch one) => (one.Gross, one.Tare) = (Typed(one.Gross), one.Tare is { } tare ? Typed(tare) : null);

    private static double Typed(double kilograms)
    {
        var ounces = Math.Round(kilograms / Units.Pound * OuncesPerPound);
        var (pounds, rest) = (Math.Floor(ounces / OuncesPerPound), ounces % OuncesPerPound);
        return (pounds + (rest < FirstOfTwoDigits ? rest / 10 : rest / 100)) * Units.Pound;
    }
}

/// <summary>The first two digits of the mass with the container changed places.</summary>
public sealed record DigitsSwapped : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => (Swapped(honest.Gross) - (honest.Tare ?? 0)) / honest.Net;

    internal override void OnPaper(OneCatch one) => one.Gross = Swapped(one.Gross);

    private static double Swapped(double kilograms)
    {
        var unit = Math.Pow(10, Math.Floor(Math.Log10(kilograms)));
        var (first, second) = (Math.Floor(kilograms / unit), Math.Floor(kilograms / unit * 10) % 10);
        return kilograms + (second - first) * unit + (first - second) * unit / 10;
    }
}
