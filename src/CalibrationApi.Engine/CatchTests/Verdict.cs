namespace CalibrationApi.Engine.CatchTests;

/// <summary>What to do after a catch test.</summary>
public enum Verdict
{
    /// <summary>Something is wrong with the test itself: find out what before using any number of it.</summary>
    Investigate,

    /// <summary>Not sure enough yet: catch again.</summary>
    Repeat,

    /// <summary>The value in force is good enough: leave it.</summary>
    Keep,

    /// <summary>Type in the new value.</summary>
    Adopt,
}
