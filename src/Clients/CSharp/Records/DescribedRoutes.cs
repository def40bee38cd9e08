using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;
using CalibrationApi.Client.V1;
using Microsoft.Kiota.Abstractions;
using Microsoft.Kiota.Abstractions.Serialization;

namespace CalibrationApi.Client;

/// <summary>
/// The operations of one kind of described record, in the generated code. All kinds have the same ones, but no type in common.
/// </summary>
internal sealed record DescribedRoutes<TDraft, TAnswer>(
    Func<RequestInformation> List,
    Func<TDraft, RequestInformation> Create,
    Func<string, RequestInformation> Get,
    Func<string, TDraft, RequestInformation> Replace,
    ParsableFactory<TDraft> ReadDraft,
    ParsableFactory<TAnswer> ReadAnswer,
    Func<Exchange, RequestInformation, CancellationToken, IAsyncEnumerable<TAnswer>> Follow
)
    where TDraft : IParsable
    where TAnswer : IParsable;

/// <summary>The kinds.</summary>
internal static class DescribedRoutes
{
    public static DescribedRoutes<MachineRequest, MachineAnswer> Machines(V1RequestBuilder v1) =>
        new(
            () => v1.Machines.ToGetRequestInformation(),
            draft => v1.Machines.ToPostRequestInformation(draft),
            id => v1.Machines[id].ToGetRequestInformation(),
            (id, draft) => v1.Machines[id].ToPutRequestInformation(draft),
            MachineRequest.CreateFromDiscriminatorValue,
            MachineAnswer.CreateFromDiscriminatorValue,
            (exchange, request, cancelled) =>
                exchange.FollowAsync<MachineAnswerPage, MachineAnswer>(request, MachineAnswerPage.CreateFromDiscriminatorValue, cancelled)
        );

    public static DescribedRoutes<ProductRequest, ProductAnswer> Products(V1RequestBuilder v1) =>
        new(
            () => v1.Products.ToGetRequestInformation(),
            draft => v1.Products.ToPostRequestInformation(draft),
            id => v1.Products[id].ToGetRequestInformation(),
            (id, draft) => v1.Products[id].ToPutRequestInformation(draft),
            ProductRequest.CreateFromDiscriminatorValue,
            ProductAnswer.CreateFromDiscriminatorValue,
            (exchange, request, cancelled) =>
                exchange.FollowAsync<ProductAnswerPage, ProductAnswer>(request, ProductAnswerPage.CreateFromDiscriminatorValue, cancelled)
        );

    public static DescribedRoutes<LotRequest, LotAnswer> Lots(V1RequestBuilder v1) =>
        new(
            () => v1.Lots.ToGetRequestInformation(),
            draft => v1.Lots.ToPostRequestInformation(draft),
            id => v1.Lots[id].ToGetRequestInformation(),
            (id, draft) => v1.Lots[id].ToPutRequestInformation(draft),
            LotRequest.CreateFromDiscriminatorValue,
            LotAnswer.CreateFromDiscriminatorValue,
            (exchange, request, cancelled) =>
                exchange.FollowAsync<LotAnswerPage, LotAnswer>(request, LotAnswerPage.CreateFromDiscriminatorValue, cancelled)
        );

    public static DescribedRoutes<ScaleRequest, ScaleAnswer> Scales(V1RequestBuilder v1) =>
        new(
            () => v1.Scales.ToGetRequestInformation(),
            draft => v1.Scales.ToPostRequestInformation(draft),
            id => v1.Scales[id].ToGetRequestInformation(),
            (id, draft) => v1.Scales[id].ToPutRequestInformation(draft),
            ScaleRequest.CreateFromDiscriminatorValue,
            ScaleAnswer.CreateFromDiscriminatorValue,
            (exchange, request, cancelled) =>
                exchange.FollowAsync<ScaleAnswerPage, ScaleAnswer>(request, ScaleAnswerPage.CreateFromDiscriminatorValue, cancelled)
        );

    public static DescribedRoutes<ContainerRequest, ContainerAnswer> Containers(V1RequestBuilder v1) =>
        new(
            () => v1.Containers.ToGetRequestInformation(),
            draft => v1.Containers.ToPostRequestInformation(draft),
            id => v1.Containers[id].ToGetRequestInformation(),
            (id, draft) => v1.Containers[id].ToPutRequestInformation(draft),
            ContainerRequest.CreateFromDiscriminatorValue,
            ContainerAnswer.CreateFromDiscriminatorValue,
            (exchange, request, cancelled) =>
                exchange.FollowAsync<ContainerAnswerPage, ContainerAnswer>(
                    request,
                    ContainerAnswerPage.CreateFromDiscriminatorValue,
                    cancelled
                )
        );

    public static DescribedRoutes<PlanRequest, PlanAnswer> Plans(V1RequestBuilder v1) =>
        new(
            () => v1.Plans.ToGetRequestInformation(),
            draft => v1.Plans.ToPostRequestInformation(draft),
            id => v1.Plans[id].ToGetRequestInformation(),
            (id, draft) => v1.Plans[id].ToPutRequestInformation(draft),
            PlanRequest.CreateFromDiscriminatorValue,
            PlanAnswer.CreateFromDiscriminatorValue,
            (exchange, request, cancelled) =>
                exchange.FollowAsync<PlanAnswerPage, PlanAnswer>(request, PlanAnswerPage.CreateFromDiscriminatorValue, cancelled)
        );

    public static DescribedRoutes<WorkspaceRequest, WorkspaceAnswer> Workspaces(V1RequestBuilder v1) =>
        new(
            () => v1.Workspaces.ToGetRequestInformation(),
            draft => v1.Workspaces.ToPostRequestInformation(draft),
            id => v1.Workspaces[id].ToGetRequestInformation(),
            (id, draft) => v1.Workspaces[id].ToPutRequestInformation(draft),
            WorkspaceRequest.CreateFromDiscriminatorValue,
            WorkspaceAnswer.CreateFromDiscriminatorValue,
            (exchange, request, cancelled) =>
                exchange.FollowAsync<WorkspaceAnswerPage, WorkspaceAnswer>(
                    request,
                    WorkspaceAnswerPage.CreateFromDiscriminatorValue,
                    cancelled
                )
        );
}
