namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>What a published limit counts. Phosphate is P2O5 and potash K2O, as on labels.</summary>
public enum LimitedNutrient
{
    /// <summary>All nitrogen.</summary>
    Nitrogen,

    /// <summary>Nitrogen from urea.</summary>
    UreaNitrogen,

    /// <summary>Nitrogen from urea and from ammonium sulfate.</summary>
    UreaAndSulfateNitrogen,

    /// <summary>All nitrogen but that of ammonium phosphates.</summary>
    NitrogenBesidePhosphates,

    /// <summary>P2O5.</summary>
    Phosphate,

    /// <summary>K2O.</summary>
    Potash,

    /// <summary>Nitrogen and K2O together.</summary>
    NitrogenPlusPotash,

    /// <summary>Sulfur, as the element.</summary>
    Sulfur,

    /// <summary>Nitrogen, P2O5, K2O and sulfur together: what is limited to nothing at all.</summary>
    AllNutrients,

    /// <summary>The nitrogen of ammonium phosphates, which goes with the phosphate that a source allows in that form.</summary>
    PhosphateNitrogen,
}
