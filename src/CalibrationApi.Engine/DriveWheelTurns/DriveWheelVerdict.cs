namespace CalibrationApi.Engine.DriveWheelTurns;

/// <summary>What to do about the setting of a machine that a wheel drives.</summary>
public enum DriveWheelVerdict
{
    /// <summary>Something is wrong with the test itself: find out what before using any number of it.</summary>
    Investigate,

    /// <summary>Not sure enough yet: turn and weigh again.</summary>
    Repeat,

    /// <summary>The setting is good enough: leave it.</summary>
    Keep,

    /// <summary>Correct the setting as told, then test again.</summary>
    Correct,

    /// <summary>Nothing was caught yet: turn the wheel and weigh.</summary>
    Untested,

    /// <summary>The rate was measured, and no target rate was stated to compare it with.</summary>
    NoTarget,
}
