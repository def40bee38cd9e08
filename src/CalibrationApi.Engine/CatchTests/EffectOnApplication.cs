using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.CatchTests;

/// <summary>What happens if the value in force stays although the meter delivers something else.</summary>
/// <param name="AppliedRate">R (1 + delta): above the target when the meter delivers more than the value says.</param>
/// <param name="MassOverArea">Mass too much over the stated area, kg; negative when too little. Null without an area.</param>
/// <param name="Cost">Money for that mass; negative is product saved that the crop does not get. Null without a price.</param>
public sealed record EffectOnApplication(MassPerArea AppliedRate, Mass? MassOverArea, double? Cost)
{
    /// <summary>The effect of a change delta on a target rate.</summary>
    /// <param name="target">Target rate R.</param>
    /// <param name="delta">k / k_in_force - 1.</param>
    /// <param name="area">Area still to be seeded.</param>
    /// <param name="pricePerKilogram">Money per kilogram.</param>
    /// <remarks>
    /// <para>Formula: R (1 + delta), kg/m2; excess = R delta A, kg; cost = excess times price.</para>
    /// <para>Range: target above 0, delta above -1; null without area or price.</para>
    /// <para>Source: our own derivation.</para>
    /// <para>Accuracy: 1e-12 relative for the rate, 1e-9 for mass and money (EffectOnApplicationTests).</para>
    /// </remarks>
    public static EffectOnApplication Of(MassPerArea target, double delta, Area? area, double? pricePerKilogram)
    {
        var excess = area is { } known ? target.KilogramsPerSquareMetre * delta * known.SquareMetres : (double?)null;
        return new EffectOnApplication(
            new MassPerArea(target.KilogramsPerSquareMetre * (1 + delta)),
            excess is { } mass ? new Mass(mass) : null,
            excess * pricePerKilogram
        );
    }
}
