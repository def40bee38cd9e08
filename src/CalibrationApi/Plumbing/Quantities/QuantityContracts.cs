using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Plumbing.Quantities;

/// <summary>A mass.</summary>
public class MassQuantity : Quantity<Mass>;

/// <summary>An application rate by mass.</summary>
public class MassPerAreaQuantity : Quantity<MassPerArea>;

/// <summary>The mass a meter delivers per revolution.</summary>
public class MassPerRevolutionQuantity : Quantity<MassPerRevolution>;

/// <summary>A number of revolutions, whole or not.</summary>
public class RevolutionsQuantity : Quantity<Revolutions>;

/// <summary>The speed of a meter shaft.</summary>
public class RotationQuantity : Quantity<RotationalSpeed>;

/// <summary>A ground speed.</summary>
public class SpeedQuantity : Quantity<Speed>;

/// <summary>A length.</summary>
public class LengthQuantity : Quantity<Length>;

/// <summary>An area.</summary>
public class AreaQuantity : Quantity<Area>;

/// <summary>A volume.</summary>
public class VolumeQuantity : Quantity<Volume>;

/// <summary>The mass of a product per bulk volume. A bushel is always named.</summary>
public class BulkDensityQuantity : Quantity<BulkDensity>;

/// <summary>A time span.</summary>
public class TimeQuantity : Quantity<Duration>;

/// <summary>A mass flow.</summary>
public class MassPerTimeQuantity : Quantity<MassFlow>;

/// <summary>A volume flow, such as that of air.</summary>
public class VolumePerTimeQuantity : Quantity<VolumeFlow>;

/// <summary>A ratio of like quantities.</summary>
public class RatioQuantity : Quantity<Ratio>;

/// <summary>Sensor pulses per revolution.</summary>
public class PulsesPerRevolutionQuantity : Quantity<PulsesPerRevolution>;

/// <summary>Plants or seeds per area.</summary>
public class CountPerAreaQuantity : Quantity<CountPerArea>;

/// <summary>Seeds per mass.</summary>
public class CountPerMassQuantity : Quantity<CountPerMass>;

/// <summary>Plants or seeds per length of row.</summary>
public class CountPerLengthQuantity : Quantity<CountPerLength>;

/// <summary>Sensor pulses per distance driven.</summary>
public class PulsesPerDistanceQuantity : Quantity<PulsesPerDistance>;

/// <summary>A value of any dimension, in an answer.</summary>
public sealed class AnyQuantity
{
    /// <summary>The number, in the unit beside it.</summary>
    public required double Value { get; init; }

    /// <summary>The unit, one of those in <c>GET /v1/units</c>.</summary>
    public required string Unit { get; init; }
}

/// <summary>The mass of a thousand kernels.</summary>
public class MassPerThousandQuantity : Quantity<MassPerThousand>;

/// <summary>A pressure above that of the air around.</summary>
public class PressureQuantity : Quantity<Pressure>;

/// <summary>A temperature.</summary>
public class TemperatureQuantity : Quantity<Temperature>;
