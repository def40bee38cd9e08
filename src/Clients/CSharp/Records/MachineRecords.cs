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

    /// <summary>Reads which values are in force on a machine, since when and why.</summary>
    /// <param name="machine">Id of the machine.</param>
    /// <param name="filter">Which of them; all of today when null.</param>
    /// <param name="units">Units of the answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public async Task<IReadOnlyList<ValueInForceAnswer>> GetValuesInForceAsync(string machine, ValueInForceFilter? filter = null, UnitSystem units = UnitSystem.AsAsked, CancellationToken cancellationToken = default)
    {
        ArgumentException.ThrowIfNullOrEmpty(machine);
        var request = (filter ?? new()).Apply(v1.Machines[machine].ValuesInForce.ToGetRequestInformation()).In(units);
        var answer = await Exchange.SendAsync(request, ValuesInForceAnswer.CreateFromDiscriminatorValue, cancellationToken).ConfigureAwait(false);
        return answer.Items ?? [];
    }
}
