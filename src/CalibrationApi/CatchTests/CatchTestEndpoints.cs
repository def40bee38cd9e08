using FluentValidation;

namespace CalibrationApi.CatchTests;

/// <summary>Routes of catch tests.</summary>
internal static class CatchTestEndpoints
{
    public static void AddCatchTests(this IServiceCollection services) =>
        services.AddSingleton<IValidator<CatchTestRequest>, CatchTestRequestValidator>();

    public static void MapCatchTests(this IEndpointRouteBuilder routes) =>
        routes.MapPost("/calculations/catch-test", EvaluateCatchTest.Handle).WithName("evaluateCatchTest").WithTags("Catch tests");
}
