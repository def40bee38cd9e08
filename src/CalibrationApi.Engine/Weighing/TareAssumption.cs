using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.Weighing;

/// <summary>What is said where equal tare readings count as one.</summary>
internal static class TareAssumption
{
    /// <summary>Weighings that are told apart by nothing but equal tare readings were made with one container.</summary>
    /// <param name="name">The member that the readings stand in.</param>
    public static Assumption EqualTares(string name) =>
        new(
            name,
            null,
            "equal tare readings, or none that differ: taken as one container on one scale, whose reading is rounded the same way each time and serves all; judgement"
        )
        {
            Member = "",
        };
}
