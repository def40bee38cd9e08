using CalibrationApi.Client.Http;
using CalibrationApi.Client.Models;
using CalibrationApi.Client.V1;

namespace CalibrationApi.Client;

/// <summary>Machines with their meters, and the values in their controllers.</summary>
public sealed class MachineRecords : DescribedRecords<MachineRequest, MachineAnswer>
{
    private readonly V1RequestBuilder v1;

    internal MachineRecords(Exchange exchange, V1RequestBuilder v1)
        : base(exchange, DescribedRoutes.Machines(v1)) => this.v1 = v1;

    /// <summary>Lists which values are in force on a machine, since when and why; pages are fetched as you go.</summary>
    /// <param name="machine">Id of the machine.</param>
    /// <param name="filter">Which of them; all of today when null.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public IAsyncEnumerable<ValueInForceAnswer> ListValuesInForceAsync(
        string machine,
        ValueInForceFilter? filter = null,
        UnitSystem units = UnitSystem.AsAsked,
        CancellationToken cancellationToken = default
    )
    {
        ArgumentException.ThrowIfNullOrEmpty(machine);
        var request = (filter ?? new()).Apply(v1.Machines[machine].ValuesInForce.ToGetRequestInformation()).In(units);
        return Exchange.FollowAsync<ValueInForceAnswerPage, ValueInForceAnswer>(
            request,
            ValueInForceAnswerPage.CreateFromDiscriminatorValue,
            cancellationToken
        );
    }
}
