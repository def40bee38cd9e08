using CalibrationApi.Engine.ControllerEntries;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Calculations.CatchTests;

/// <summary>Units in which controllers take a value, over all forms; the form at hand narrows them.</summary>
internal static class ControllerUnits
{
    public static IReadOnlyList<string> All { get; } =
    [
        .. Words
            .All<ControllerForm>()
            .Select(form => ControllerEntry.DimensionOf(Words.Read(form, default(ControllerForm))))
            .Distinct()
            .SelectMany(UnitTable.Of)
            .Select(unit => unit.Symbol),
    ];
}
