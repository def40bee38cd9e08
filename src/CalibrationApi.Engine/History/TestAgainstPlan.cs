using CalibrationApi.Engine.Answers;

namespace CalibrationApi.Engine.History;

/// <summary>A meter with what it puts down, by the names of the records.</summary>
/// <param name="Meter">Position on the machine.</param>
/// <param name="Product">The product.</param>
/// <param name="Element">The metering element.</param>
/// <param name="Setting">Its setting; null for none.</param>
/// <param name="Lot">The lot; null when none is named.</param>
public sealed record NamedMeter(string Meter, string Product, string Element, string? Setting, string? Lot);

/// <summary>What of a test is not as its plan says.</summary>
public static class TestAgainstPlan
{
    /// <summary>The difference between a test and the plan that it belongs to; null where there is none.</summary>
    /// <param name="planned">The meters of the plan.</param>
    /// <param name="tested">What was tested.</param>
    public static Finding? Difference(IEnumerable<NamedMeter> planned, NamedMeter tested)
    {
        NamedMeter[] ofMeter = [.. planned.Where(one => one.Meter == tested.Meter)];
        if (ofMeter.Length == 0)
            return Finding.Warning(
                RecordedTestCodes.DiffersFromPlan,
                $"The plan has nothing for the meter {tested.Meter}. Check which meter was tested, and which plan it belongs to."
            );
        var meter = ofMeter.FirstOrDefault(one => one.Product == tested.Product) ?? ofMeter[0];
        string[] others =
        [
            .. Other("product", meter.Product, tested.Product),
            .. Other("element", meter.Element, tested.Element),
            .. Other("setting", meter.Setting ?? "", tested.Setting ?? ""),
            // A plan that names no lot takes any.
            .. meter.Lot is null ? [] : Other("lot", meter.Lot, tested.Lot),
        ];
        return others.Length == 0
            ? null
            : Finding.Warning(
                RecordedTestCodes.DiffersFromPlan,
                $"The plan has another {string.Join(" and another ", others)} for this meter. Check which was tested: a value found with one does not hold for another."
            );
    }

    private static string[] Other(string what, string? planned, string? tested) => planned == tested ? [] : [what];
}
