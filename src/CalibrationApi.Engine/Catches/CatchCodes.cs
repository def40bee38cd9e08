using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.Catches;

/// <summary>The codes of catches, whatever is made of them.</summary>
public static class CatchCodes
{
    /// <summary>The conditions of a test differ from those stated for sowing.</summary>
    public static WarningCode ConditionsDiffer { get; } =
        new("conditions-differ", "Test again under the conditions of sowing, or correct the conditions that were stated.");
}
