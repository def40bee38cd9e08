namespace CalibrationApi.Engine.Answers;

/// <summary>The codes with which the engine refuses a well-formed question.</summary>
public static class RefusalCode
{
    /// <summary>Two settings cannot both be met.</summary>
    public const string SettingsAtOdds = "settings-at-odds";
}
