using CalibrationApi.Records;
using CalibrationApi.Storage.Records;
using FluentValidation;

namespace CalibrationApi.Containers;

/// <summary>Routes of containers.</summary>
internal static class ContainersEndpoints
{
    public static void AddContainers(this IServiceCollection services) =>
        services.AddSingleton<IValidator<ContainerRequest>, ContainerRequestValidator>();

    public static void MapContainers(this IEndpointRouteBuilder routes) =>
        routes.MapDescribedRecords<ContainerRequest, ContainerAnswer>(RecordKind.Containers, "containers", "Container", "container");
}
