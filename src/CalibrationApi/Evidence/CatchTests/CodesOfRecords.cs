using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.History;
using CalibrationApi.Engine.MeteringElements;
using CalibrationApi.Engine.NewLots;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>The codes of what is noticed when a test is joined with its records.</summary>
internal static class CodesOfRecords
{
    /// <summary>What can be noticed about the records that a test refers to.</summary>
    public static IReadOnlyList<FindingCode> Findings { get; } =
    [
        RecordedTestCodes.DiffersFromPlan,
        NewLotCodes.OtherLot,
        HistoryCodes.ScaleCheckOverdue,
        HistoryCodes.VariesFromDayToDay,
        HistoryCodes.BasisSuperseded,
        TypedValueCodes.FitsOtherProduct,
        TypedValueCodes.StatedUnlikeRecords,
        ElementCodes.UnlikeOtherProducts,
    ];
}
