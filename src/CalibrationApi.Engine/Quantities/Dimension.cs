namespace CalibrationApi.Engine.Quantities;

/// <summary>What a quantity measures. Each dimension has its own closed list of units in <see cref="UnitTable"/>.</summary>
public enum Dimension
{
    /// <summary>Mass; SI unit kg.</summary>
    Mass,

    /// <summary>Application rate by mass; SI unit kg/m2.</summary>
    MassPerArea,

    /// <summary>Application rate or stand by count; SI unit 1/m2.</summary>
    CountPerArea,

    /// <summary>Mass a meter delivers per revolution; kg per revolution.</summary>
    MassPerRevolution,

    /// <summary>Revolutions as a plain count.</summary>
    Revolutions,

    /// <summary>Rotational speed; revolutions per second.</summary>
    Rotation,

    /// <summary>Ground speed; SI unit m/s.</summary>
    Speed,

    /// <summary>Length; SI unit m.</summary>
    Length,

    /// <summary>Area; SI unit m2.</summary>
    Area,

    /// <summary>Volume; SI unit m3.</summary>
    Volume,

    /// <summary>Mass per bulk volume; SI unit kg/m3.</summary>
    BulkDensity,

    /// <summary>Mass of one thousand kernels; kg per kernel.</summary>
    MassPerThousand,

    /// <summary>Kernels per mass; SI unit 1/kg.</summary>
    CountPerMass,

    /// <summary>Kernels per length of row; SI unit 1/m.</summary>
    CountPerLength,

    /// <summary>Time; SI unit s.</summary>
    Time,

    /// <summary>Mass flow; SI unit kg/s.</summary>
    MassPerTime,

    /// <summary>Volume flow, such as that of air; SI unit m3/s.</summary>
    VolumePerTime,

    /// <summary>A ratio of like quantities; SI unit 1.</summary>
    Ratio,

    /// <summary>Sensor pulses per revolution.</summary>
    PulsesPerRevolution,

    /// <summary>Sensor pulses per distance; SI unit 1/m.</summary>
    PulsesPerDistance,

    /// <summary>Pressure; SI unit Pa.</summary>
    Pressure,

    /// <summary>Temperature; SI unit K.</summary>
    Temperature,
}
