namespace CalibrationApi.Engine.BulkDensities;

/// <summary>Materials for which <see cref="ReferenceDensities"/> holds a published bulk density.</summary>
public enum ReferenceMaterial
{
    /// <summary>Alfalfa seed.</summary>
    Alfalfa,

    /// <summary>Ammonium nitrate of low density.</summary>
    AmmoniumNitrateLowDensity,

    /// <summary>Prilled ammonium nitrate.</summary>
    AmmoniumNitratePrilled,

    /// <summary>Ammonium sulfate crystals.</summary>
    AmmoniumSulfateCrystal,

    /// <summary>Granular ammonium sulfate.</summary>
    AmmoniumSulfateGranular,

    /// <summary>Barley.</summary>
    Barley,

    /// <summary>Birdsfoot trefoil seed.</summary>
    BirdsfootTrefoil,

    /// <summary>Bluegrass seed.</summary>
    Bluegrass,

    /// <summary>Smooth brome grass seed.</summary>
    BromeGrass,

    /// <summary>Canary seed.</summary>
    CanarySeed,

    /// <summary>Canola and other rapeseed.</summary>
    Canola,

    /// <summary>Chickpea.</summary>
    Chickpea,

    /// <summary>Clover seed: alsike, crimson, ladino, red, sweet, white.</summary>
    Clover,

    /// <summary>Cowpea.</summary>
    Cowpea,

    /// <summary>Diammonium phosphate, DAP.</summary>
    DiammoniumPhosphate,

    /// <summary>Faba bean.</summary>
    FabaBean,

    /// <summary>Flax, linseed.</summary>
    Flax,

    /// <summary>Lupin.</summary>
    Lupin,

    /// <summary>Corn (maize), shelled.</summary>
    Corn,

    /// <summary>Millet.</summary>
    Millet,

    /// <summary>Monoammonium phosphate, MAP.</summary>
    MonoammoniumPhosphate,

    /// <summary>Oat.</summary>
    Oat,

    /// <summary>Orchard grass seed.</summary>
    OrchardGrass,

    /// <summary>Pea.</summary>
    Pea,

    /// <summary>Granular potassium chloride, muriate of potash.</summary>
    PotassiumChlorideGranular,

    /// <summary>Soluble potassium chloride.</summary>
    PotassiumChlorideSoluble,

    /// <summary>Potassium magnesium sulfate.</summary>
    PotassiumMagnesiumSulfate,

    /// <summary>Rough rice.</summary>
    Rice,

    /// <summary>Rye.</summary>
    Rye,

    /// <summary>Safflower.</summary>
    Safflower,

    /// <summary>Grain sorghum.</summary>
    Sorghum,

    /// <summary>Soybean.</summary>
    Soybean,

    /// <summary>Sudan grass seed.</summary>
    SudanGrass,

    /// <summary>Sugar-beet seed.</summary>
    SugarBeet,

    /// <summary>Sunflower, oil type.</summary>
    Sunflower,

    /// <summary>Tall fescue seed.</summary>
    TallFescue,

    /// <summary>Timothy seed.</summary>
    Timothy,

    /// <summary>Triple superphosphate, TSP.</summary>
    TripleSuperphosphate,

    /// <summary>Triticale.</summary>
    Triticale,

    /// <summary>Granular urea.</summary>
    UreaGranular,

    /// <summary>Vetch seed.</summary>
    Vetch,

    /// <summary>Wheat.</summary>
    Wheat,
}
