using CalibrationApi.Calculations.BulkDensities;
using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Calculations.Declaring;
using CalibrationApi.Calculations.DistanceSensors;
using CalibrationApi.Calculations.DriveWheelTurns;
using CalibrationApi.Calculations.ElementFits;
using CalibrationApi.Calculations.MeterSpeeds;
using CalibrationApi.Calculations.NewLots;
using CalibrationApi.Calculations.ProductRates;
using CalibrationApi.Calculations.SeedingRates;
using CalibrationApi.Calculations.SeedRowLimits;
using CalibrationApi.Calculations.StandCounts;
using CalibrationApi.Calculations.StandRisks;
using CalibrationApi.Calculations.VolumeChecks;

namespace CalibrationApi;

/// <summary>Every calculation of the service.</summary>
internal static class CalculationList
{
    public static IReadOnlyList<Calculation> All { get; } =
    [
        CatchPlanCalculation.Declaration,
        CatchTestCalculation.Declaration,
        MeterSpeedCalculation.Declaration,
        BulkDensityCalculation.Declaration,
        VolumeCheckCalculation.Declaration,
        ElementFitCalculation.Declaration,
        DistanceSensorCalculation.Declaration,
        DriveWheelTurnsCalculation.Declaration,
        SeedRowLimitCalculation.Declaration,
        ProductRateCalculation.Declaration,
        SeedingRateCalculation.Declaration,
        NewLotCalculation.Declaration,
        StandCountCalculation.Declaration,
        StandRiskCalculation.Declaration,
    ];
}
