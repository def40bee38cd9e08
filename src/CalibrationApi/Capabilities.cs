using CalibrationApi.Access;
using CalibrationApi.Adoptions;
using CalibrationApi.Audit;
using CalibrationApi.Calculations.BulkDensities;
using CalibrationApi.Calculations.CatchPlans;
using CalibrationApi.Calculations.DistanceSensors;
using CalibrationApi.Calculations.DriveWheelTurns;
using CalibrationApi.Calculations.MeterSpeeds;
using CalibrationApi.Calculations.NewLots;
using CalibrationApi.Calculations.ProductRates;
using CalibrationApi.Calculations.SeedRowLimits;
using CalibrationApi.Calculations.SeedingRates;
using CalibrationApi.Calculations.StandCounts;
using CalibrationApi.Calculations.StandRisks;
using CalibrationApi.Calculations.VolumeChecks;
using CalibrationApi.CatchTests;
using CalibrationApi.Codes;
using CalibrationApi.Containers;
using CalibrationApi.History;
using CalibrationApi.Http;
using CalibrationApi.Keys;
using CalibrationApi.Lots;
using CalibrationApi.Machines;
using CalibrationApi.Plans;
using CalibrationApi.Products;
using CalibrationApi.ScaleChecks;
using CalibrationApi.Scales;
using CalibrationApi.Units;
using CalibrationApi.Workspaces;

namespace CalibrationApi;

/// <summary>Everything that the service can do.</summary>
internal static class Capabilities
{
    public static void AddCapabilities(this IServiceCollection services)
    {
        services.AddCatchTests();
        services.AddCatchPlans();
        services.AddMeterSpeeds();
        services.AddBulkDensities();
        services.AddVolumeChecks();
        services.AddDistanceSensors();
        services.AddDriveWheelTurns();
        services.AddSeedRowLimits();
        services.AddProductRates();
        services.AddSeedingRates();
        services.AddNewLots();
        services.AddStandCounts();
        services.AddStandRisks();
        services.AddMachines();
        services.AddProducts();
        services.AddLots();
        services.AddScales();
        services.AddContainers();
        services.AddPlans();
        services.AddScaleChecks();
        services.AddAdoptions();
        services.AddWorkspaces();
        services.AddKeys();
        services.AddAudit();
    }

    public static void MapCapabilities(this WebApplication app)
    {
        var v1 = app.MapGroup("/v1").WithRequestChecks().WithScopeForEveryRoute().WithExportsNoted();
        v1.MapCatchPlans();
        v1.MapCatchTests();
        v1.MapMeterSpeeds();
        v1.MapBulkDensities();
        v1.MapVolumeChecks();
        v1.MapDistanceSensors();
        v1.MapDriveWheelTurns();
        v1.MapSeedRowLimits();
        v1.MapProductRates();
        v1.MapSeedingRates();
        v1.MapNewLots();
        v1.MapStandCounts();
        v1.MapStandRisks();
        v1.MapUnits();
        v1.MapCodes();
        v1.MapMachines();
        v1.MapProducts();
        v1.MapLots();
        v1.MapScales();
        v1.MapContainers();
        v1.MapPlans();
        v1.MapScaleChecks();
        v1.MapAdoptions();
        v1.MapHistory();
        v1.MapWorkspaces();
        v1.MapKeys();
        v1.MapAudit();
    }
}
