using System.Text.Json.Serialization.Metadata;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Lists;
using CalibrationApi.Plumbing.Observability;
using CalibrationApi.Plumbing.Settings;
using FluentValidation;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.Options;
using JsonOptions = Microsoft.AspNetCore.Http.Json.JsonOptions;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>Answers many questions of one calculation in one request.</summary>
/// <remarks>
/// No parameter has the type of a question: how a handler with such a one is called could not be written before the program runs.
/// </remarks>
internal abstract class BatchEndpoint
{
    /// <param name="context">The request, whose body is read while it is answered.</param>
    /// <param name="json">How questions are read.</param>
    /// <param name="settings">How long a line may be.</param>
    /// <param name="log">Where failures of ours go.</param>
    /// <param name="told">Which of them.</param>
    /// <param name="units">Units of all answers; as-asked takes for each those of its question.</param>
    public abstract Task<IResult> HandleAsync(
        HttpContext context,
        IOptions<JsonOptions> json,
        CalibrationSettings settings,
        ILogger<BatchAnswer> log,
        FailureLines told,
        [FromQuery] string? units = null
    );
}

/// <inheritdoc/>
internal sealed class BatchEndpoint<TRequest, TAnswer>(
    Func<TRequest, string?, Results<JsonAnswer<TAnswer>, ProblemResult>> calculation,
    QuestionTable? table
) : BatchEndpoint
    where TRequest : class
    where TAnswer : class
{
    private readonly string[] offered = table is null ? [PageFormats.Ndjson] : [PageFormats.Ndjson, PageFormats.Csv];
    private readonly string[] taken = table is null ? [PageFormats.Ndjson] : BatchRoutes.TakenWithTables;

    /// <param name="context">The request, whose body is read while it is answered.</param>
    /// <param name="json">How questions are read.</param>
    /// <param name="settings">How long a line may be.</param>
    /// <param name="log">Where failures of ours go.</param>
    /// <param name="told">Which of them.</param>
    /// <param name="units">Units of all answers; as-asked takes for each those of its question.</param>
    public override async Task<IResult> HandleAsync(
        HttpContext context,
        IOptions<JsonOptions> json,
        CalibrationSettings settings,
        ILogger<BatchAnswer> log,
        FailureLines told,
        [FromQuery] string? units = null
    )
    {
        var validator = context.RequestServices.GetRequiredService<IValidator<TRequest>>();
        var sent = context.Request.ContentType;
        var isTable = table is not null && (MediaTypes.IsUtf8(sent, PageFormats.Csv) || MediaTypes.IsUtf8(sent, PageFormats.Tsv));
        if (!isTable && !MediaTypes.IsUtf8(sent, PageFormats.Ndjson))
            return Unsupported(context.Response);
        if (MediaTypes.Best(context.Request, offered) is not { } wanted)
            return ProblemResult.Of(
                StatusCodes.Status406NotAcceptable,
                ErrorCodes.NotAcceptable,
                $"The answers come as {string.Join(" or ", offered)}. Ask for that in the Accept header."
            );
        var mostBytes = settings.Limits.LineBytes;
        var (rows, refusal) = isTable ? await TableQuestions.OpenAsync(context, table!, mostBytes) : default;
        if (refusal is not null)
            return refusal;
        LineReader questions = rows is null ? new NdjsonQuestions(context.Request.BodyReader, mostBytes) : rows;
        AnswerLines answers =
            wanted == PageFormats.Csv
                ? TableAnswers.Of<TAnswer>(rows?.Format ?? TableFormat.Commas, rows?.Given ?? [])
                : new NdjsonAnswers();
        var type = (JsonTypeInfo<TRequest>)json.Value.SerializerOptions.GetTypeInfo(typeof(TRequest));
        var traceId = Problem.TraceIdOf(context);
        return new BatchAnswer(questions, answers, Evaluate);

        void Evaluate(LineChunk chunk, CancellationToken stop)
        {
            foreach (var line in chunk.Lines)
            {
                stop.ThrowIfCancellationRequested();
                switch (line.Problem ?? Answer(chunk.TextOf(line)))
                {
                    case JsonAnswer<TAnswer> result:
                        answers.Write(chunk, line, result);
                        break;
                    case ProblemResult problem:
                        answers.Write(chunk, line, (line.Rows is { } origin ? problem.With(origin.Place) : problem).ToProblem(traceId));
                        break;
                }
            }
        }

        IResult Answer(ReadOnlySpan<byte> text)
        {
            try
            {
                var (question, problem) = JsonBody.Parse(ref text, type);
                return problem ?? RequestFilter.Broken(validator, question!) ?? calculation(question!, units).Result;
            }
            catch (Exception failure) when (failure is not OutOfMemoryException)
            {
                // Alone, this question would have got the same; the others must not suffer from it.
                if (told.Take())
                    BatchLog.NotAnswered(log, traceId, failure);
                return UnhandledFailures.OfOurs();
            }
        }
    }

    private ProblemResult Unsupported(HttpResponse response)
    {
        response.Headers["Accept-Post"] = string.Join(", ", taken);
        return ProblemResult.Of(
            StatusCodes.Status415UnsupportedMediaType,
            ErrorCodes.MediaTypeUnsupported,
            $"Send the body as {string.Join(" or ", taken)} in UTF-8, with that Content-Type."
        );
    }
}

/// <summary>What a batch tells the operator.</summary>
internal static partial class BatchLog
{
    [LoggerMessage(Level = LogLevel.Error, Message = "A question of a batch could not be answered. Trace {TraceId}.")]
    public static partial void NotAnswered(ILogger log, string traceId, Exception failure);
}
