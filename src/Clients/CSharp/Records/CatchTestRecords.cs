using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;
using CalibrationApi.Client.V1;

namespace CalibrationApi.Client;

/// <summary>Catch tests as evidence: what was read at the machine, and what it said.</summary>
public sealed class CatchTestRecords : EvidenceRecords<RecordCatchTestRequest, CatchTestRecordAnswer>
{
    private readonly Exchange exchange;
    private readonly V1RequestBuilder v1;

    internal CatchTestRecords(Exchange exchange, V1RequestBuilder v1)
        : base(exchange, EvidenceRoutes.CatchTests(v1))
    {
        this.exchange = exchange;
        this.v1 = v1;
    }

    /// <summary>Evaluates a stored test again with the engine of today and says whether the answer is the same. Stores nothing.</summary>
    /// <param name="id">Id of the test.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public Task<RecomputationAnswer> RecomputeAsync(string id, CancellationToken cancellationToken = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(id);
        return exchange.SendAsync(
            v1.CatchTests[id].Recomputations.ToPostRequestInformation(),
            RecomputationAnswer.CreateFromDiscriminatorValue,
            cancellationToken
        );
    }
}
