using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Operations;

namespace CalibrationApi.Evidence.CatchTests;

/// <summary>Routes of catch tests.</summary>
internal static class CatchTestEndpoints
{
    private const string Tag = "Catch tests";

    public static void MapCatchTests(this IEndpointRouteBuilder routes)
    {
        routes
            .MapPost("/catch-tests", RecordCatchTest.HandleAsync)
            .WithName("recordCatchTest")
            .WithTags(Tag)
            .Needs(Scope.Write)
            .Produces<CatchTestRecordAnswer>(StatusCodes.Status201Created)
            .Produces<CatchTestRecordAnswer>()
            .WithMetadata(new RefusedWith(CatchTestCodes.Refusals))
            .WithMetadata(Declared.Storing);
        routes
            .MapGet("/catch-tests/{id}", GetCatchTest.Handle)
            .WithName("getCatchTest")
            .WithTags(Tag)
            .Needs(Scope.Read)
            .Produces<CatchTestRecordAnswer>()
            .WithMetadata(Declared.Reading);
        routes
            .MapPost("/catch-tests/{id}/recomputations", RecomputeCatchTest.Handle)
            .WithName("recomputeCatchTest")
            .WithTags(Tag)
            .Needs(Scope.Read)
            .WithMetadata(new RefusedWith(CatchTestCodes.Refusals))
            .WithMetadata(Declared.ComputingFromRecord);
    }
}
