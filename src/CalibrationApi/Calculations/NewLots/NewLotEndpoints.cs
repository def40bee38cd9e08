using CalibrationApi.Access;
using CalibrationApi.Batch;
using FluentValidation;

namespace CalibrationApi.Calculations.NewLots;

/// <summary>Routes of new lots.</summary>
internal static class NewLotEndpoints
{
    private const string Tag = "New lots";

    public static void AddNewLots(this IServiceCollection services) =>
        services.AddSingleton<IValidator<NewLotRequest>, NewLotRequestValidator>();

    public static void MapNewLots(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/calculations/new-lot", EvaluateNewLot.Handle).WithName("evaluateNewLot").WithTags(Tag).Needs(Scope.Calculate);
        routes.MapBatch<NewLotRequest, NewLotAnswer>("/calculations/new-lot", EvaluateNewLot.Evaluate).WithName("evaluateNewLotBatch").WithTags(Tag).Needs(Scope.Calculate);
    }
}
