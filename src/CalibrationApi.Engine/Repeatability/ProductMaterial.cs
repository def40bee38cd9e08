namespace CalibrationApi.Engine.Repeatability;

/// <summary>How a product flows, as far as it changes what a catch can be expected to repeat.</summary>
public enum ProductMaterial
{
    /// <summary>Cereals, pulses, granular fertilizer.</summary>
    FreeFlowing,

    /// <summary>Small seed metered at a few kilograms per hectare: turns and scale divisions decide how much is enough.</summary>
    SmallSeed,

    /// <summary>Dusty, sticky or caking products.</summary>
    Dusty,
}
