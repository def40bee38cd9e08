using CalibrationApi.Engine.Adoptions;
using CalibrationApi.Plumbing.Access;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Operations;

namespace CalibrationApi.Evidence.Adoptions;

/// <summary>Routes of adoptions and values in force.</summary>
internal static class AdoptionEndpoints
{
    private const string Tag = "Values in force";

    public static void MapAdoptions(this IEndpointRouteBuilder routes)
    {
        routes
            .MapPost("/adoptions", AdoptValue.HandleAsync)
            .WithName("adoptValue")
            .WithTags(Tag)
            .Needs(Scope.Write)
            .Produces<AdoptionAnswer>(StatusCodes.Status201Created)
            .Produces<AdoptionAnswer>()
            .WithMetadata(new RefusedWith(TypedValueCheck.Codes))
            .WithMetadata(Declared.Storing);
        routes
            .MapGet("/adoptions/{id}", ReadAdoptions.Get)
            .WithName("getAdoption")
            .WithTags(Tag)
            .Needs(Scope.Read)
            .Produces<AdoptionAnswer>()
            .WithMetadata(Declared.Reading);
        routes
            .MapGet("/machines/{id}/values-in-force", ReadAdoptions.InForce)
            .WithName("listValuesInForce")
            .WithTags(Tag)
            .Needs(Scope.Read)
            .Produces<Page<ValueInForceAnswer>>(StatusCodes.Status200OK, PageFormats.Json, PageFormats.Csv, PageFormats.Ndjson)
            .WithMetadata(Declared.ListingBelow);
    }
}
