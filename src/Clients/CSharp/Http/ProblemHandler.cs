namespace CalibrationApi.Client.Http;

/// <summary>Turns every refusal into a typed exception, whatever status it has.</summary>
/// <remarks>
/// Here and not in the generated code, which knows the statuses of the contract only: a proxy in between has others. What
/// goes past the generated code, such as batches, is covered too.
/// </remarks>
internal sealed class ProblemHandler(TimeProvider clock, HttpMessageHandler inner) : DelegatingHandler(inner)
{
    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        var response = await base.SendAsync(request, cancellationToken).ConfigureAwait(false);
        if ((int)response.StatusCode < 400)
            return response;
        using (response)
            throw await ProblemReading
                .ReadAsync(response, RepetitionHandler.AskedFor(response, clock), cancellationToken)
                .ConfigureAwait(false);
    }
}
