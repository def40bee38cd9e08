using System.Runtime.Serialization;

namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>What a published limit counts. Phosphate is P2O5 and potash K2O, as on labels.</summary>
public enum LimitedNutrient
{
    /// <summary>All nitrogen.</summary>
    [EnumMember(Value = "N")]
    Nitrogen,

    /// <summary>Nitrogen from urea.</summary>
    [EnumMember(Value = "urea-N")]
    UreaNitrogen,

    /// <summary>Nitrogen from urea and from ammonium sulfate.</summary>
    [EnumMember(Value = "urea-and-sulfate-N")]
    UreaAndSulfateNitrogen,

    /// <summary>All nitrogen but that of ammonium phosphates.</summary>
    [EnumMember(Value = "N-beside-phosphates")]
    NitrogenBesidePhosphates,

    /// <summary>P2O5.</summary>
    [EnumMember(Value = "P2O5")]
    Phosphate,

    /// <summary>K2O.</summary>
    [EnumMember(Value = "K2O")]
    Potash,

    /// <summary>Nitrogen and K2O together.</summary>
    [EnumMember(Value = "N-plus-K2O")]
    NitrogenPlusPotash,

    /// <summary>Sulfur, as the element.</summary>
    [EnumMember(Value = "S")]
    Sulfur,

    /// <summary>Nitrogen, P2O5, K2O and sulfur together: what is limited to nothing at all.</summary>
    [EnumMember(Value = "all")]
    AllNutrients,

    /// <summary>The nitrogen of ammonium phosphates, which goes with the phosphate that a source allows in that form.</summary>
    [EnumMember(Value = "phosphate-N")]
    PhosphateNitrogen,
}
