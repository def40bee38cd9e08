namespace CalibrationApi.Client.Http;

/// <summary>Gives every storing POST a key of its own, unless the caller gave it one.</summary>
/// <remarks>It stands outside the retries, so all tries of a request carry the same key and store one record at most.</remarks>
internal sealed class IdempotencyKeyHandler(HttpMessageHandler inner) : DelegatingHandler(inner)
{
    public const string Header = "Idempotency-Key";

    protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        // Calculations store nothing.
        var stores =
            request.Method == HttpMethod.Post && !request.RequestUri!.AbsolutePath.Contains("/v1/calculations/", StringComparison.Ordinal);
        if (stores && !request.Headers.Contains(Header))
            request.Headers.Add(Header, Quoted(Guid.NewGuid().ToString()));
        return base.SendAsync(request, cancellationToken);
    }

    /// <summary>As the header wants it: a structured text in quotes.</summary>
    public static string Quoted(string key) => $"\"{key}\"";
}
