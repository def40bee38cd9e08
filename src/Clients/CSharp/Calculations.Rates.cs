using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;

namespace CalibrationApi.Client;

public sealed partial class Calculations
{
    /// <summary>Finds how much seed a stand takes, or what stand a rate gives.</summary>
    /// <param name="question">The stand or the rate, and what is known of the seed.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<SeedingRateAnswer> EvaluateSeedingRateAsync(SeedingRateRequest question, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        exchange.SendAsync(routes.SeedingRate.ToPostRequestInformation(question).In(units), SeedingRateAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>The same for many questions.</summary>
    /// <param name="questions">One after the other.</param>
    /// <param name="units">Units of the answers.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<BatchLine<SeedingRateRequest, SeedingRateAnswer>> EvaluateSeedingRatesAsync(IAsyncEnumerable<SeedingRateRequest> questions, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        batch.RunAsync(routes.SeedingRate.ToPostRequestInformation(new()).In(units), questions, SeedingRateAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>Finds out what another lot or treatment changes, and when to test.</summary>
    /// <param name="question">The value in force, the lot behind it and the new one.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<NewLotAnswer> EvaluateNewLotAsync(NewLotRequest question, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        exchange.SendAsync(routes.NewLot.ToPostRequestInformation(question).In(units), NewLotAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>The same for many questions.</summary>
    /// <param name="questions">One after the other.</param>
    /// <param name="units">Units of the answers.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<BatchLine<NewLotRequest, NewLotAnswer>> EvaluateNewLotsAsync(IAsyncEnumerable<NewLotRequest> questions, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        batch.RunAsync(routes.NewLot.ToPostRequestInformation(new()).In(units), questions, NewLotAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>Finds the stand from counts, how sure it is, and what came up of the seed.</summary>
    /// <param name="question">The counts with their samples.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<StandCountAnswer> EvaluateStandCountAsync(StandCountRequest question, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        exchange.SendAsync(routes.StandCount.ToPostRequestInformation(question).In(units), StandCountAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>The same for many questions.</summary>
    /// <param name="questions">One after the other.</param>
    /// <param name="units">Units of the answers.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<BatchLine<StandCountRequest, StandCountAnswer>> EvaluateStandCountsAsync(IAsyncEnumerable<StandCountRequest> questions, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        batch.RunAsync(routes.StandCount.ToPostRequestInformation(new()).In(units), questions, StandCountAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>Finds the rate that reaches a stand with a probability, or the probability of a rate.</summary>
    /// <param name="question">The stand, and how uncertain seed and field are.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<StandRiskAnswer> EvaluateStandRiskAsync(StandRiskRequest question, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        exchange.SendAsync(routes.StandRisk.ToPostRequestInformation(question).In(units), StandRiskAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>The same for many questions.</summary>
    /// <param name="questions">One after the other.</param>
    /// <param name="units">Units of the answers.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<BatchLine<StandRiskRequest, StandRiskAnswer>> EvaluateStandRisksAsync(IAsyncEnumerable<StandRiskRequest> questions, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        batch.RunAsync(routes.StandRisk.ToPostRequestInformation(new()).In(units), questions, StandRiskAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>Finds the rates of products that supply nutrients at least cost.</summary>
    /// <param name="question">The nutrients wanted and the products at hand.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<ProductRateAnswer> EvaluateProductRateAsync(ProductRateRequest question, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        exchange.SendAsync(routes.ProductRate.ToPostRequestInformation(question).In(units), ProductRateAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>The same for many questions.</summary>
    /// <param name="questions">One after the other.</param>
    /// <param name="units">Units of the answers.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<BatchLine<ProductRateRequest, ProductRateAnswer>> EvaluateProductRatesAsync(IAsyncEnumerable<ProductRateRequest> questions, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        batch.RunAsync(routes.ProductRate.ToPostRequestInformation(new()).In(units), questions, ProductRateAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>Compares what is placed with the seed with published limits.</summary>
    /// <param name="question">Crop, soil, opener and products.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<SeedRowLimitAnswer> EvaluateSeedRowLimitAsync(SeedRowLimitRequest question, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        exchange.SendAsync(routes.SeedRowLimit.ToPostRequestInformation(question).In(units), SeedRowLimitAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>The same for many questions.</summary>
    /// <param name="questions">One after the other.</param>
    /// <param name="units">Units of the answers.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<BatchLine<SeedRowLimitRequest, SeedRowLimitAnswer>> EvaluateSeedRowLimitsAsync(IAsyncEnumerable<SeedRowLimitRequest> questions, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        batch.RunAsync(routes.SeedRowLimit.ToPostRequestInformation(new()).In(units), questions, SeedRowLimitAnswer.CreateFromDiscriminatorValue, cancellationToken);
}
