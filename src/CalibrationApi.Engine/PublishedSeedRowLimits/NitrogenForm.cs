namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>The form of the nitrogen in a product, as far as published limits tell forms apart.</summary>
public enum NitrogenForm
{
    /// <summary>
    /// Urea; also urea that is coated or treated otherwise than with a urease inhibitor, for which no source held here has a number.
    /// </summary>
    Urea,

    /// <summary>
    /// Urea and ammonium nitrate in solution; all of its nitrogen counts as urea, because limits without urea exclude it.
    /// </summary>
    UreaAmmoniumNitrate,

    /// <summary>Ammonium sulfate.</summary>
    AmmoniumSulfate,

    /// <summary>Ammonium phosphates.</summary>
    AmmoniumPhosphate,

    /// <summary>Ammonium nitrate.</summary>
    AmmoniumNitrate,

    /// <summary>None of these.</summary>
    Other,

    /// <summary>
    /// Urea with a urease inhibitor (NBPT). Published limits count it as urea; only the stand-loss model tells the two apart.
    /// </summary>
    UreaWithInhibitor,
}
