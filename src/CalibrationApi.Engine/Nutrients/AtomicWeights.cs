namespace CalibrationApi.Engine.Nutrients;

/// <summary>Standard atomic weights of the elements in plant nutrients and their oxides.</summary>
/// <remarks>
/// Source: SOURCES.md, key CIAAW-2021. Where the table gives an interval for natural material, its conventional value is taken:
/// oxygen [15.999 03, 15.999 77], sulfur [32.059, 32.076].
/// </remarks>
public static class AtomicWeights
{
    /// <summary>Oxygen.</summary>
    public const double Oxygen = 15.999;

    /// <summary>Phosphorus.</summary>
    public const double Phosphorus = 30.973761998;

    /// <summary>Sulfur.</summary>
    public const double Sulfur = 32.06;

    /// <summary>Potassium.</summary>
    public const double Potassium = 39.0983;
}
