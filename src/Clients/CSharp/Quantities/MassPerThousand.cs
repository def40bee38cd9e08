using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

/// <summary>Makes a thousand-kernel mass.</summary>
public static class MassPerThousand
{
    /// <summary>In grams per thousand kernels.</summary>
    /// <param name="value">The number.</param>
    public static MassPerThousandQuantity Grams(double value) => new() { Value = value, Unit = MassPerThousandQuantity_unit.G1000 };
}
