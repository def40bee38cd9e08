using System.Runtime.Serialization;

namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>Where the field lies, as far as published limits tell places apart: ISO 3166-2.</summary>
public enum Region
{
    /// <summary>Manitoba, Canada.</summary>
    [EnumMember(Value = "CA-MB")]
    Manitoba,

    /// <summary>Saskatchewan, Canada.</summary>
    [EnumMember(Value = "CA-SK")]
    Saskatchewan,

    /// <summary>Alberta, Canada.</summary>
    [EnumMember(Value = "CA-AB")]
    Alberta,

    /// <summary>Kansas, United States.</summary>
    [EnumMember(Value = "US-KS")]
    Kansas,

    /// <summary>North Dakota, United States.</summary>
    [EnumMember(Value = "US-ND")]
    NorthDakota,

    /// <summary>South Dakota, United States.</summary>
    [EnumMember(Value = "US-SD")]
    SouthDakota,

    /// <summary>Any other place; no source held here is for it.</summary>
    Elsewhere,
}
