using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>The container of the catches.</summary>
public sealed class ContainerOfTest
{
    /// <summary>Volume; with the bulk density of the product it says when the container runs over.</summary>
    [Measured(0, 10, "m3", ExcludesLeast = true)]
    public VolumeQuantity? Volume { get; set; }

    /// <summary>
    /// Mass of the empty container, for catches that give a net mass or no tare above zero. It is never taken off: it only tells what a
    /// forgotten tare would look like.
    /// </summary>
    [Measured(0, 10, "t")]
    public MassQuantity? Tare { get; set; }
}

/// <summary>Another container at hand.</summary>
public sealed class OtherContainerOfTest
{
    /// <summary>What the owner calls it.</summary>
    [Text(Rules.LongestName)]
    public string? Name { get; set; }

    /// <summary>Mass of the empty container.</summary>
    [Needed, Measured(0, 10, "t")]
    public MassQuantity? Tare { get; set; }
}

/// <summary>What another metering element or another product would give.</summary>
public sealed class OtherDeliveryOfTest
{
    /// <summary>What the owner calls it.</summary>
    [Text(Rules.LongestName)]
    public string? Name { get; set; }

    /// <summary>The mass per revolution to expect of it.</summary>
    [Needed, Measured]
    public MassPerRevolutionQuantity? MassPerRevolution { get; set; }

    /// <summary>
    /// Of another product: its bulk density, where the mass per revolution was found by tests. With that of the product tested the two are
    /// compared.
    /// </summary>
    [Measured]
    public BulkDensityQuantity? BulkDensity { get; set; }
}
