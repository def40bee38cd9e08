using System.Net.Http.Headers;
using System.Runtime.CompilerServices;
using System.Text.Json;
using CalibrationApi.Client.Models;
using Microsoft.Kiota.Abstractions;
using Microsoft.Kiota.Abstractions.Serialization;
using Microsoft.Kiota.Serialization.Json;

namespace CalibrationApi.Client.Batches;

/// <summary>Many questions to one calculation, one JSON text to a line, answered line by line and in order.</summary>
/// <remarks>
/// The stream of questions is cut into pieces, each a request of its own, so that memory is bounded, a piece can be sent
/// again when the service is busy, and no piece is larger than what the service takes in before it has to be read from: over
/// HTTP/1.1 the body is sent whole before the answer is read, and one endless request could leave both sides waiting for each
/// other. Answers are given on as they arrive.
/// </remarks>
internal sealed class Batch(HttpClient http)
{
    private const int MostLines = 1000;
    private const int MostBytes = 512 * 1024;
    private const string MediaType = "application/x-ndjson";

    /// <summary>What a batch accepts: its answers are read as they arrive.</summary>
    public static MediaTypeWithQualityHeaderValue Accepted { get; } = new(MediaType);

    /// <summary>Asks.</summary>
    /// <param name="single">The request for a single question; the batch has its address, one step further.</param>
    /// <param name="questions">The questions; not read further than the answers are.</param>
    /// <param name="read">Reads an answer.</param>
    /// <param name="cancellationToken">Cancels it.</param>
    public async IAsyncEnumerable<BatchLine<TQuestion, TAnswer>> RunAsync<TQuestion, TAnswer>(
        RequestInformation single,
        IAsyncEnumerable<TQuestion> questions,
        ParsableFactory<TAnswer> read,
        [EnumeratorCancellation] CancellationToken cancellationToken
    )
        where TQuestion : IParsable
        where TAnswer : class, IParsable
    {
        var address = new UriBuilder(single.URI);
        address.Path += "/batch";
        var before = 0L;
        await foreach (var piece in PiecesAsync(questions, cancellationToken).ConfigureAwait(false))
        {
            using var request = new HttpRequestMessage(HttpMethod.Post, address.Uri);
            request.Content = new ByteArrayContent(piece.Body) { Headers = { ContentType = new(MediaType) } };
            request.Headers.Accept.Add(Accepted);
            using var response = await http.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, cancellationToken)
                .ConfigureAwait(false);
            using var answers = new StreamReader(await response.Content.ReadAsStreamAsync(cancellationToken).ConfigureAwait(false));
            for (var i = 0; i < piece.Questions.Count; i++)
            {
                // Lines that have arrived already are read without a look at it.
                cancellationToken.ThrowIfCancellationRequested();
                var text = await answers.ReadLineAsync(cancellationToken).ConfigureAwait(false)
                    ?? throw new HttpIOException(HttpRequestError.ResponseEnded, $"The answers broke off after line {before + i}.");
                yield return Read(text, i + 1, before, piece.Questions[i], read);
            }

            before += piece.Questions.Count;
        }
    }

    private static async IAsyncEnumerable<(byte[] Body, List<TQuestion> Questions)> PiecesAsync<TQuestion>(
        IAsyncEnumerable<TQuestion> questions,
        [EnumeratorCancellation] CancellationToken cancellationToken
    )
        where TQuestion : IParsable
    {
        using var body = new MemoryStream();
        var piece = new List<TQuestion>();
        await foreach (var question in questions.WithCancellation(cancellationToken).ConfigureAwait(false))
        {
            using var writer = new JsonSerializationWriter();
            writer.WriteObjectValue(null, question);
            using var line = writer.GetSerializedContent();
            if (piece.Count == MostLines || (piece.Count > 0 && body.Length + line.Length >= MostBytes))
            {
                yield return (body.ToArray(), piece);
                body.SetLength(0);
                piece = [];
            }

            await line.CopyToAsync(body, cancellationToken).ConfigureAwait(false);
            body.WriteByte((byte)'\n');
            piece.Add(question);
        }

        if (piece.Count > 0)
            yield return (body.ToArray(), piece);
    }

    private static BatchLine<TQuestion, TAnswer> Read<TQuestion, TAnswer>(
        string text,
        long line,
        long before,
        TQuestion question,
        ParsableFactory<TAnswer> read
    )
        where TAnswer : class, IParsable
    {
        using var document = JsonDocument.Parse(text);
        var root = document.RootElement;
        // An answer that is put beside the wrong question would be worse than none.
        if (root.GetProperty("line").GetInt64() != line)
            throw new InvalidDataException(
                $"The answer to line {before + line} came as that to line {before + root.GetProperty("line").GetInt64()}."
            );
        if (root.TryGetProperty("result", out var result))
            return new(before + line, question, new JsonParseNode(result).GetObjectValue(read), null);
        var problem = new JsonParseNode(root.GetProperty("problem")).GetObjectValue(Problem.CreateFromDiscriminatorValue);
        return new(before + line, question, null, ProblemReading.ToException(problem, problem.Status ?? 422));
    }
}
