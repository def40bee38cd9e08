namespace CalibrationApi.Engine.PublishedSeedRowLimits;

/// <summary>Texture of the soil in the seedbed.</summary>
public enum SoilTexture
{
    /// <summary>Sandy loam or lighter; also called coarse or sandy.</summary>
    Light,

    /// <summary>Loam to clay loam.</summary>
    Medium,

    /// <summary>Clay to heavy clay.</summary>
    Heavy,
}

/// <summary>Moisture of the seedbed. What falls short of good counts as dry.</summary>
public enum SeedbedMoisture
{
    /// <summary>Good to excellent: at or near field capacity, and expected to stay so after seeding.</summary>
    Good,

    /// <summary>Anything drier, and any drying weather after seeding.</summary>
    Dry,
}

/// <summary>The opener that places seed and fertilizer.</summary>
public enum Opener
{
    /// <summary>Two discs that meet at the seed.</summary>
    DoubleDisc,

    /// <summary>One disc.</summary>
    Disc,

    /// <summary>A knife.</summary>
    Knife,

    /// <summary>A spoon.</summary>
    Spoon,

    /// <summary>A hoe.</summary>
    Hoe,

    /// <summary>A sweep.</summary>
    Sweep,
}
