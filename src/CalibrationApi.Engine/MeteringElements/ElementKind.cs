namespace CalibrationApi.Engine.MeteringElements;

/// <summary>How a metering element carries product, and with it which volume its displacement means.</summary>
public enum ElementKind
{
    /// <summary>Pockets that are struck off: the displacement is their volume, and no more can come out.</summary>
    ClosedPockets,

    /// <summary>Flutes open to the product: the displacement is their volume, and a layer beyond them is dragged along.</summary>
    OpenFlutes,

    /// <summary>A flight on a shaft: the displacement is the volume between shaft and edge of the flight over one turn.</summary>
    Auger,
}
