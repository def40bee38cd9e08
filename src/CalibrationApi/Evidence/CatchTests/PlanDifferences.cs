using CalibrationApi.Engine.Answers;
using CalibrationApi.Records.Plans;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>What of a test is not as its plan says.</summary>
internal static class PlanDifferences
{
    public static IEnumerable<Finding> Of(PlanRequest plan, RecordCatchTestRequest test)
    {
        var planned = plan.Meters!.Where(one => one!.Meter == test.Meter).OfType<MeterOfFieldPlan>().ToArray();
        if (planned.Length == 0)
        {
            yield return Finding.Warning(
                RecordedTestCodes.DiffersFromPlan,
                $"The plan has nothing for the meter {test.Meter!}. Check which meter was tested, and which plan it belongs to."
            );
            yield break;
        }

        var meter = planned.FirstOrDefault(one => one.Product == test.Product) ?? planned[0];
        string[] others =
        [
            .. Other("product", meter.Product, test.Product),
            .. Other("element", meter.Element, test.Element),
            .. Other("setting", meter.Setting ?? "", test.Setting ?? ""),
            .. meter.Lot is null ? [] : Other("lot", meter.Lot, test.Lot),
        ];
        if (others.Length > 0)
            yield return Finding.Warning(
                RecordedTestCodes.DiffersFromPlan,
                $"The plan has another {string.Join(" and another ", others)} for this meter. Check which was tested: a value found with one does not hold for another."
            );
    }

    private static string[] Other(string what, string? planned, string? tested) => planned == tested ? [] : [what];
}
