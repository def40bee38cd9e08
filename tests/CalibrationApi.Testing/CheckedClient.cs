namespace CalibrationApi.Testing;

/// <summary>A client of a service that listens on an address; it fails on every answer that is not what the contract says.</summary>
public static class CheckedClient
{
    /// <summary>Makes one.</summary>
    /// <param name="address">Where the service listens.</param>
    /// <param name="contract">The contract; the committed one when it is left out.</param>
    public static HttpClient Of(Uri address, ContractDocument? contract = null) =>
        new(new ContractCheckingHandler(contract) { InnerHandler = new HttpClientHandler() }) { BaseAddress = address };
}
