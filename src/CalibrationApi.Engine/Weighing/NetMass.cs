using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Weighing;

/// <summary>What is in a container.</summary>
public static class NetMass
{
    /// <summary>The mass on the scale less that of the empty container.</summary>
    /// <param name="gross">What the full container weighs g.</param>
    /// <param name="tare">What the empty one weighs t.</param>
    /// <remarks>
    /// <para>Formula: g - t, kg.</para>
    /// <para>Range: any two masses; below 0 where the two were swapped.</para>
    /// <para>Source: our own derivation, the definition of a net mass.</para>
    /// <para>Accuracy: 1e-12 relative (NetMassTests).</para>
    /// </remarks>
    public static Mass Of(Mass gross, Mass tare) => new(gross.Kilograms - tare.Kilograms);
}
