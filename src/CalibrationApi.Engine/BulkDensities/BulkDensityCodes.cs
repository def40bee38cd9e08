using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.BulkDensities;

/// <summary>The codes of bulk densities.</summary>
public static class BulkDensityCodes
{
    /// <summary>A bulk density lies outside what is published for its material.</summary>
    public static NoteOrWarningCode DensityUnlikeReference { get; } =
        new(
            "density-unlike-reference",
            "Weigh a known volume again, and check mass, volume and their units. On a severity of note nothing needs to be done: lots differ, and a measured density goes before a published one."
        );

    /// <summary>A stated bulk density was not compared with published ones, because no reference was named.</summary>
    public static NoteCode DensityNotCompared { get; } =
        new("density-not-compared", "Name the reference that the product is nearest to, or weigh a known volume.");

    /// <summary>A bulk density rests on published values alone.</summary>
    public static NoteCode PublishedDensityOnly { get; } = new("published-density-only", "Weigh a known volume of the lot.");

    /// <summary>Weighings of one volume differ more than filling it anew explains.</summary>
    public static WarningCode WeighingsScatter { get; } =
        new(
            "weighings-scatter",
            "Fill and strike off the container the same way each time. Look for a slip in one of the weighings, and weigh once more."
        );

    /// <summary>The volume that was weighed is smaller than what official test weights take.</summary>
    public static NoteCode SmallVolume { get; } = new("small-volume", "Weigh a larger volume, at best some litres.");

    /// <summary>A test weight is in pounds per bushel, of which there are two.</summary>
    public static NoteCode OtherBushel { get; } =
        new("other-bushel", "Make sure which bushel is meant: the US (Winchester) or the imperial (Avery) one.");

    /// <summary>A test weight allows for grain that settles, so that loose grain is lighter.</summary>
    public static NoteCode TestWeightSettled { get; } =
        new("test-weight-settled", "For a tank that was just filled take the loose density, or weigh a known volume.");

    /// <summary>What an answer can find.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } =
    [DensityUnlikeReference, DensityNotCompared, PublishedDensityOnly, WeighingsScatter, SmallVolume, OtherBushel, TestWeightSettled];

    /// <summary>The cautions of an answer.</summary>
    public static IReadOnlyList<CautionCode> Cautions { get; } = [CautionCodes.ProductDust, CautionCodes.TankEntry];
}
