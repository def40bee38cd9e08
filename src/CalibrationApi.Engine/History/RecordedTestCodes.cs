using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.History;

/// <summary>The codes of catch tests beside the records that they name.</summary>
public static class RecordedTestCodes
{
    /// <summary>Meter, product, element, setting or lot of a test are not those of its plan.</summary>
    public static WarningCode DiffersFromPlan { get; } =
        new(
            "differs-from-plan",
            "Check what was tested. If it was meant so, change the plan; otherwise test what the plan says, or enter the test once more with the right names, superseding this record."
        );
}
