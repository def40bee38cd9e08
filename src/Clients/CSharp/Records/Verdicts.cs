namespace CalibrationApi.Client;

/// <summary>The verdicts of catch tests and scale checks. More may be added.</summary>
public static class Verdicts
{
    /// <summary>The catches contradict each other: find out why first.</summary>
    public const string Investigate = "investigate";

    /// <summary>Not sure enough: make more catches.</summary>
    public const string Repeat = "repeat";

    /// <summary>The number in force holds.</summary>
    public const string Keep = "keep";

    /// <summary>Type in the new number.</summary>
    public const string Adopt = "adopt";

    /// <summary>The scale is within its limit.</summary>
    public const string Passed = "passed";

    /// <summary>The scale is outside its limit.</summary>
    public const string Failed = "failed";
}
