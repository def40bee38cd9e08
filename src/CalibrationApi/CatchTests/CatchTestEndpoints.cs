using CalibrationApi.Access;
using CalibrationApi.Batch;
using CalibrationApi.Calculations.CatchTests;
using CalibrationApi.Http;
using FluentValidation;

namespace CalibrationApi.CatchTests;

/// <summary>Routes of catch tests.</summary>
internal static class CatchTestEndpoints
{
    private const string Tag = "Catch tests";
    private static readonly QuestionTable Table = new(typeof(CatchTestRequest), "catches", CatchTestRequestValidator.MostCatches);

    public static void AddCatchTests(this IServiceCollection services)
    {
        services.AddSingleton<IValidator<CatchTestRequest>, CatchTestRequestValidator>();
        services.AddSingleton<IValidator<RecordCatchTestRequest>, RecordCatchTestRequestValidator>();
    }

    public static void MapCatchTests(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/calculations/catch-test", EvaluateCatchTest.Handle).WithName("evaluateCatchTest").WithTags(Tag).Needs(Scope.Calculate);
        routes.MapBatch<CatchTestRequest, CatchTestAnswer>("/calculations/catch-test", EvaluateCatchTest.Evaluate, Table).WithName("evaluateCatchTestBatch").WithTags(Tag).Needs(Scope.Calculate);
        routes.MapPost("/catch-tests", RecordCatchTest.HandleAsync).WithName("recordCatchTest").WithTags(Tag).Needs(Scope.Write)
            .Produces<CatchTestRecordAnswer>(StatusCodes.Status201Created).Produces<CatchTestRecordAnswer>().WithMetadata(Declared.Storing);
        routes.MapGet("/catch-tests/{id}", GetCatchTest.Handle).WithName("getCatchTest").WithTags(Tag).Needs(Scope.Read)
            .Produces<CatchTestRecordAnswer>().WithMetadata(Declared.Reading);
        routes.MapPost("/catch-tests/{id}/recomputations", RecomputeCatchTest.Handle).WithName("recomputeCatchTest").WithTags(Tag).Needs(Scope.Read).WithMetadata(Declared.ComputingFromRecord);
    }
}
