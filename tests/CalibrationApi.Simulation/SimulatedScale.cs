using CalibrationApi.Engine.Quantities;
using CalibrationApi.Engine.Weighing;

namespace CalibrationApi.Simulation;

/// <summary>A scale with known errors.</summary>
/// <param name="Stated">What its owner knows of it; its division and scatter are also those of the readings.</param>
public sealed record SimulatedScale(Scale Stated)
{
    /// <summary>Error of the span: indicated minus true over true.</summary>
    public double SpanError { get; init; }

    /// <summary>Error of the zero; the same in every reading.</summary>
    public Mass ZeroError { get; init; }

    /// <summary>This scale with a span error that is anywhere within its limit at a net load.</summary>
    public SimulatedScale WithinItsLimitAt(Mass net, SeededRandom random)
    {
        var limit = Stated.LimitAt(net).Limit.Kilograms / net.Kilograms;
        return this with { SpanError = random.Between(-limit, limit) };
    }

    /// <summary>What the display shows under a load: whole divisions.</summary>
    /// <param name="load">The load, kg.</param>
    /// <param name="random">Draws the scatter of the reading.</param>
    /// <param name="zeroedAt">What was on the scale, as it would indicate it without rounding, when it was set to zero, kg.</param>
    internal double Show(double load, SeededRandom random, double zeroedAt = 0)
    {
        var scatter = random.Normal(Stated.ReadingScatter?.Kilograms ?? 0);
        var division = Stated.Division.Kilograms;
        return Math.Round((Unrounded(load) + scatter - zeroedAt) / division) * division;
    }

    /// <summary>What setting the scale to zero under a load takes off: it is kept to a quarter of a division.</summary>
    internal double SetToZero(double load, SeededRandom random)
    {
        var quarter = Stated.Division.Kilograms / 4;
        return Unrounded(load) + random.Between(-quarter, quarter);
    }

    private double Unrounded(double load) => load * (1 + SpanError) + ZeroError.Kilograms;
}
