using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>The metering element that is fitted. With the bulk density of the product it says what a mass per revolution can be.</summary>
public sealed class FittedElement
{
    /// <summary>What the owner calls it.</summary>
    [Text(Rules.LongestName)]
    public string? Name { get; set; }

    /// <summary>
    /// How it carries product, and with it which volume its displacement means: <c>closed-pockets</c> that are struck off (their volume; no
    /// more can come out), <c>open-flutes</c> (their volume; a layer beyond them is dragged along) or an <c>auger</c> (the volume between
    /// shaft and edge of the flight over one turn). Default not known.
    /// </summary>
    [Word(typeof(ElementKind))]
    public string? Kind { get; set; }

    /// <summary>Volume that one revolution displaces.</summary>
    [Needed, Measured(0, 1, "m3", ExcludesLeast = true)]
    public VolumeQuantity? DisplacementPerRevolution { get; set; }

    internal ElementContent? Content(BulkDensityQuantity? density) =>
        DisplacementPerRevolution is { } displacement && density is not null
            ? new ElementContent(new(displacement.Read()), new(density.Read()), Words.Read<ElementKind>(Kind), Name)
            : null;
}
