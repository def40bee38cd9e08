namespace CalibrationApi.Client.Models;

// Every quantity is written as number and unit, as in the contract, with all its digits, "18.7 kg", and told in other units.

public partial class AreaQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class BulkDensityQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class LengthQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class MassQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class MassPerAreaQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class MassPerRevolutionQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class MassPerThousandQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class PressureQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class PulsesPerRevolutionQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class RatioQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class RevolutionsQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class RotationQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class SpeedQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class TemperatureQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class TimeQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class VolumeQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class AnyQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class EntryAnswer
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class TypedNumber
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class ReferenceOfTest
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class CountPerAreaQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class CountPerMassQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class CountPerLengthQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class PulsesPerDistanceQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class VolumePerTimeQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}

public partial class MassPerTimeQuantity
{
    /// <summary>Number and unit, as in the contract.</summary>
    public override string ToString() => Written.As(Value, Unit);

    /// <summary>The number in another unit, converted here without asking the service.</summary>
    /// <param name="unit">Symbol of a unit of the same dimension, as <c>GET /v1/units</c> lists them.</param>
    /// <exception cref="ArgumentException">The unit is not known, or is one of something else.</exception>
    public double In(string unit) => Conversion.Of(Value, Unit, unit);
}
