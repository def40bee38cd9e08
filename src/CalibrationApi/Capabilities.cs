using CalibrationApi.Administration.Audit;
using CalibrationApi.Administration.Keys;
using CalibrationApi.Administration.Workspaces;
using CalibrationApi.Changes;
using CalibrationApi.Evidence.Adoptions;
using CalibrationApi.Evidence.CatchTests;
using CalibrationApi.Evidence.History;
using CalibrationApi.Evidence.ScaleChecks;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Validation;
using CalibrationApi.Records.Containers;
using CalibrationApi.Records.Lots;
using CalibrationApi.Records.Machines;
using CalibrationApi.Records.Plans;
using CalibrationApi.Records.Products;
using CalibrationApi.Records.Scales;
using CalibrationApi.Reference.Codes;
using CalibrationApi.Reference.Units;
using FluentValidation;

namespace CalibrationApi;

/// <summary>Everything that the service can do.</summary>
internal static class Capabilities
{
    public static void AddCapabilities(this IServiceCollection services)
    {
        services.AddSingleton(typeof(IValidator<>), typeof(RequestValidator<>));
        services.AddAudit();
        services.AddChanges();
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
        v1.MapChanges();
        v1.MapWorkspaces();
        v1.MapKeys();
        v1.MapAudit();
    }
}
