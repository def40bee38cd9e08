using CalibrationApi.Access;
using CalibrationApi.Adoptions;
using CalibrationApi.Audit;
using CalibrationApi.Calculations;
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
using FluentValidation;

namespace CalibrationApi;

/// <summary>Everything that the service can do.</summary>
internal static class Capabilities
{
    public static void AddCapabilities(this IServiceCollection services)
    {
        services.AddSingleton(typeof(IValidator<>), typeof(RequestValidator<>));
        services.AddAudit();
    }

    public static void MapCapabilities(this WebApplication app)
    {
        var v1 = app.MapGroup("/v1").WithRequestChecks().WithScopeForEveryRoute().WithExportsNoted();
        foreach (var calculation in CalculationList.All)
            calculation.MapTo(v1);
        v1.MapCatchTests();
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
