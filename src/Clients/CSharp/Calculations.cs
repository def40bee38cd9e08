using CalibrationApi.Client.Batches;
using CalibrationApi.Client.Http;
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
}
