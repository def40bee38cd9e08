using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;
using CalibrationApi.Client.V1;

namespace CalibrationApi.Client;

/// <summary>Plans for fields, with the set-up and the catch plans that follow from them.</summary>
public sealed class PlanRecords : DescribedRecords<PlanRequest, PlanAnswer>
{
    private readonly V1RequestBuilder v1;

    internal PlanRecords(Exchange exchange, V1RequestBuilder v1)
        : base(exchange, DescribedRoutes.Plans(v1)) => this.v1 = v1;

    /// <summary>Plans the catches of a stored plan with the values that are in force now.</summary>
    /// <param name="plan">Id of the plan.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<CatchPlanAnswer> PlanCatchAsync(
        string plan,
        UnitSystem units = UnitSystem.AsAsked,
        CancellationToken cancellationToken = default
    )
    {
        ArgumentException.ThrowIfNullOrEmpty(plan);
        return Exchange.SendAsync(
            v1.Plans[plan].CatchPlan.ToGetRequestInformation().In(units),
            CatchPlanAnswer.CreateFromDiscriminatorValue,
            cancellationToken
        );
    }

    /// <summary>Works out rates and set-up of a stored plan, and what is still open.</summary>
    /// <param name="plan">Id of the plan.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<PlanSetUpAnswer> SetUpAsync(
        string plan,
        UnitSystem units = UnitSystem.AsAsked,
        CancellationToken cancellationToken = default
    )
    {
        ArgumentException.ThrowIfNullOrEmpty(plan);
        return Exchange.SendAsync(
            v1.Plans[plan].SetUp.ToGetRequestInformation().In(units),
            PlanSetUpAnswer.CreateFromDiscriminatorValue,
            cancellationToken
        );
    }
}
