namespace CalibrationApi.Simulation.Mistakes;

/// <summary>The meter was not turned until the flow was steady: the first catch lacks what fills meter and line.</summary>
/// <param name="Kilograms">What meter and line hold, kg, all points together.</param>
public sealed record NotPrimed(double Kilograms) : Mistake
{
    /// <inheritdoc/>
    public override bool HappensIn(int position) => position == 0;

    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => honest.Position == 0 ? 1 - Kilograms / (honest.PerRevolution * honest.Turns) : 1;

    internal override void AtTheMachine(OneCatch one) => one.HeldBack += Kilograms;
}

/// <summary>The container ran over: what it holds is all that was weighed.</summary>
/// <param name="Kilograms">What stays in it, kg; null for the capacity of the container.</param>
public sealed record Overflowed(double? Kilograms = null) : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => Math.Min(1, Stays(honest) / honest.Caught);

    internal override void AtTheMachine(OneCatch one) => one.MostThatStays = Stays(one);

    private double Stays(OneCatch one) =>
        Kilograms ?? one.Capacity ?? throw new InvalidOperationException("A container that runs over has a capacity.");
}

/// <summary>The tank bridged or ran empty: for a part of the turns nothing fell, in one catch more than in another.</summary>
/// <param name="ShareDelivered">Share of the turns in which the product flowed, about.</param>
public sealed record BridgedOrEmptyTank(double ShareDelivered) : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => Uneven.Share(ShareDelivered, honest.Position);

    internal override void AtTheMachine(OneCatch one) => one.ShareDelivered *= Uneven.Share(ShareDelivered, one.Position);
}

/// <summary>The meter was isolated for a part of the time while the count ran on, in one catch longer than in another.</summary>
/// <param name="ShareTurning">Share of the counted turns in which it turned, about.</param>
public sealed record MeterIsolated(double ShareTurning) : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => Uneven.Share(ShareTurning, honest.Position);

    internal override void AtTheMachine(OneCatch one) => one.ShareDelivered *= Uneven.Share(ShareTurning, one.Position);
}

/// <summary>What hangs or stands still does not do so evenly.</summary>
internal static class Uneven
{
    // Drawn once: a mistake has no random numbers of its own.
    private static readonly double[] Pattern = [1.05, 0.78, 1.3, 0.9, 1.15, 0.7];

    public static double Share(double about, int position) => Math.Min(1, about * Pattern[position % Pattern.Length]);
}

/// <summary>Another element of the machine is fitted.</summary>
/// <param name="DisplacementRatio">Its displacement over that of the element meant.</param>
public sealed record AnotherElement(double DisplacementRatio) : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => DisplacementRatio;

    internal override void AtTheMachine(OneCatch one) => one.PerRevolution *= DisplacementRatio;
}

/// <summary>Another product of the machine is in the tank.</summary>
/// <param name="DensityRatio">Its bulk density times fill over that of the product meant.</param>
public sealed record AnotherProduct(double DensityRatio) : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => DensityRatio;

    internal override void AtTheMachine(OneCatch one) => one.PerRevolution *= DensityRatio;
}

/// <summary>One of the points that were to be caught did not run into the container.</summary>
public sealed record CatchPointMissed : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => (honest.PointsCaught - 1.0) / honest.PointsCaught;

    internal override void AtTheMachine(OneCatch one) => one.PointsCaught--;
}

/// <summary>Half of the points ran into the container, and their mass was taken for that of all.</summary>
public sealed record HalfOfPointsCaught : Mistake
{
    /// <inheritdoc/>
    public override double Ratio(OneCatch honest) => 0.5;

    internal override void AtTheMachine(OneCatch one) => one.PointsCaught /= 2;
}
