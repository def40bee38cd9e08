namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>Where the field lies, as far as published limits tell places apart.</summary>
public enum Region
{
    /// <summary>Manitoba, Canada.</summary>
    Manitoba,

    /// <summary>Saskatchewan, Canada.</summary>
    Saskatchewan,

    /// <summary>Alberta, Canada.</summary>
    Alberta,

    /// <summary>Kansas, United States.</summary>
    Kansas,

    /// <summary>North Dakota, United States.</summary>
    NorthDakota,

    /// <summary>South Dakota, United States.</summary>
    SouthDakota,

    /// <summary>Any other place; no source held here is for it.</summary>
    Elsewhere,
}
