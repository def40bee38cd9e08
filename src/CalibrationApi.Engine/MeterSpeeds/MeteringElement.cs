using CalibrationApi.Engine.MeteringElements;

namespace CalibrationApi.Engine.MeterSpeeds;

/// <summary>A roller, auger or other element that a meter can be fitted with.</summary>
/// <param name="Name">What the owner calls it.</param>
/// <param name="Delivery">Mass per revolution with the product in question.</param>
/// <param name="Limits">Speeds at which it may turn.</param>
/// <param name="Pockets">Pockets or flutes that discharge one after the other in one revolution, where known.</param>
/// <param name="Content">What it can hold of the product, where known.</param>
public sealed record MeteringElement(
    string Name,
    DeliveryCurve Delivery,
    MeterSpeedLimits Limits,
    int? Pockets = null,
    ElementContent? Content = null
);
