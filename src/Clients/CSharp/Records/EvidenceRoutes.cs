using CalibrationApi.Client.Models;
using CalibrationApi.Client.V1;
using Microsoft.Kiota.Abstractions;
using Microsoft.Kiota.Abstractions.Serialization;

namespace CalibrationApi.Client;

/// <summary>The operations of one kind of evidence, in the generated code.</summary>
internal sealed record EvidenceRoutes<TRequest, TAnswer>(
    Func<RequestInformation> List,
    Func<TRequest, RequestInformation> Record,
    Func<string, RequestInformation> Get,
    ParsableFactory<TAnswer> ReadAnswer
)
    where TAnswer : IParsable;

/// <summary>The kinds.</summary>
internal static class EvidenceRoutes
{
    public static EvidenceRoutes<RecordCatchTestRequest, CatchTestRecordAnswer> CatchTests(V1RequestBuilder v1) =>
        new(
            () => v1.CatchTests.ToGetRequestInformation(),
            request => v1.CatchTests.ToPostRequestInformation(request),
            id => v1.CatchTests[id].ToGetRequestInformation(),
            CatchTestRecordAnswer.CreateFromDiscriminatorValue
        );

    public static EvidenceRoutes<AdoptionRequest, AdoptionAnswer> Adoptions(V1RequestBuilder v1) =>
        new(
            () => v1.Adoptions.ToGetRequestInformation(),
            request => v1.Adoptions.ToPostRequestInformation(request),
            id => v1.Adoptions[id].ToGetRequestInformation(),
            AdoptionAnswer.CreateFromDiscriminatorValue
        );

    public static EvidenceRoutes<ScaleCheckRequest, ScaleCheckAnswer> ScaleChecks(V1RequestBuilder v1) =>
        new(
            () => v1.ScaleChecks.ToGetRequestInformation(),
            request => v1.ScaleChecks.ToPostRequestInformation(request),
            id => v1.ScaleChecks[id].ToGetRequestInformation(),
            ScaleCheckAnswer.CreateFromDiscriminatorValue
        );
}
