using CalibrationApi.Client.Batches;
using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;
using CalibrationApi.Client.V1.Calculations;

namespace CalibrationApi.Client;

/// <summary>Calculations store nothing and need no records: the same question always gets the same answer.</summary>
/// <remarks>
/// Each one also takes many questions as a stream and gives the answers as a stream, in the same order. Questions are gathered
/// to pieces of up to 1000; a refused question becomes a problem on its line and does not stop the others.
/// </remarks>
public sealed partial class Calculations
{
    private readonly Exchange exchange;
    private readonly Batch batch;
    private readonly CalculationsRequestBuilder routes;

    internal Calculations(Exchange exchange, Batch batch, CalculationsRequestBuilder routes)
    {
        this.exchange = exchange;
        this.batch = batch;
        this.routes = routes;
    }

    /// <summary>Plans a catch: how much, in how many revolutions, how long, how often, in which steps.</summary>
    /// <param name="question">The meters, the scale, the container and the ground speed.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<CatchPlanAnswer> PlanCatchAsync(CatchPlanRequest question, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        exchange.SendAsync(routes.CatchPlan.ToPostRequestInformation(question).In(units), CatchPlanAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>Plans many catches.</summary>
    /// <param name="questions">One after the other.</param>
    /// <param name="units">Units of the answers.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<BatchLine<CatchPlanRequest, CatchPlanAnswer>> PlanCatchesAsync(IAsyncEnumerable<CatchPlanRequest> questions, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        batch.RunAsync(routes.CatchPlan.ToPostRequestInformation(new()).In(units), questions, CatchPlanAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>Evaluates a catch test: the mass per revolution, how sure it is, and what to do now.</summary>
    /// <param name="question">The catches and what is known about scale, counter and the value in force.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<CatchTestAnswer> EvaluateCatchTestAsync(CatchTestRequest question, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        exchange.SendAsync(routes.CatchTest.ToPostRequestInformation(question).In(units), CatchTestAnswer.CreateFromDiscriminatorValue, cancellationToken);

    /// <summary>Evaluates many catch tests.</summary>
    /// <param name="questions">One after the other.</param>
    /// <param name="units">Units of the answers.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<BatchLine<CatchTestRequest, CatchTestAnswer>> EvaluateCatchTestsAsync(IAsyncEnumerable<CatchTestRequest> questions, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default) =>
        batch.RunAsync(routes.CatchTest.ToPostRequestInformation(new()).In(units), questions, CatchTestAnswer.CreateFromDiscriminatorValue, cancellationToken);
}
