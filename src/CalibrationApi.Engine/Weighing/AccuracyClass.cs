namespace CalibrationApi.Engine.Weighing;

/// <summary>Accuracy classes of non-automatic weighing instruments, named as OIML R 76 names them.</summary>
public enum AccuracyClass
{
    /// <summary>Special accuracy.</summary>
    I,

    /// <summary>High accuracy.</summary>
    II,

    /// <summary>Medium accuracy: most trade and platform scales.</summary>
    III,

    /// <summary>Ordinary accuracy.</summary>
    IIII,
}
