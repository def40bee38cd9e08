namespace CalibrationApi.Engine.Answers;

/// <summary>The codes with which the engine refuses a well-formed question.</summary>
public static class RefusalCode
{
    /// <summary>Two members exclude each other, or settings cannot all be met.</summary>
    [Remedy("The sentence names the members. Leave one of them out, or change the one that is wrong.")]
    public const string SettingsAtOdds = "settings-at-odds";
}
