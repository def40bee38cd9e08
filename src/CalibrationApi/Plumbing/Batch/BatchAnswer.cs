using System.Buffers;
using System.Collections.Concurrent;
using System.IO.Pipelines;
using System.Runtime.ExceptionServices;
using System.Threading.Channels;

namespace CalibrationApi.Plumbing.Batch;

/// <summary>
/// Reads questions, answers them on all cores and writes the answers in the order of the questions, all at the same time.
/// </summary>
/// <remarks>
/// Memory is bounded: so many chunks are on their way, and so many bytes of answers wait for a client that is slow to read them.
/// Beyond that nothing more is read. When something fails on the way, the connection is cut, so that the part of an answer is
/// never taken for the whole.
/// </remarks>
internal sealed class BatchAnswer(LineReader questions, AnswerLines answers, Action<LineChunk, CancellationToken> evaluate) : IResult
{
    // A client that sends everything before it reads gets about a thousand catch tests through.
    private const int MostUnread = 4 * 1024 * 1024;

    private static readonly int MostOnTheWay = 2 * Environment.ProcessorCount;
    private static readonly PipeOptions Unread = new(
        pauseWriterThreshold: MostUnread,
        resumeWriterThreshold: MostUnread / 2,
        minimumSegmentSize: 32 * 1024,
        useSynchronizationContext: false
    );

    private readonly ConcurrentQueue<LineChunk> free = new();

    public async Task ExecuteAsync(HttpContext httpContext)
    {
        var response = httpContext.Response;
        response.ContentType = answers.ContentType;
        response.Headers.Vary = "Accept";
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(httpContext.RequestAborted);
        var started = Channel.CreateBounded<Task<LineChunk>>(
            new BoundedChannelOptions(MostOnTheWay) { SingleReader = true, SingleWriter = true }
        );
        var unread = new Pipe(Unread);
        Exception? failure = null;
        await foreach (
            var stage in Task.WhenEach(
                StartAsync(started.Writer, stop.Token),
                OrderAsync(started.Reader, unread.Writer, stop.Token),
                SendAsync(unread.Reader, response, stop.Token)
            )
        )
        {
            if (stage.IsCompletedSuccessfully || failure is not null)
                continue;
            failure = stage.Exception?.InnerException ?? new OperationCanceledException(stop.Token);
            await stop.CancelAsync();
        }

        // Nobody is left to answer.
        if (failure is null || httpContext.RequestAborted.IsCancellationRequested)
            return;
        if (response.HasStarted && failure is BadHttpRequestException)
            httpContext.Abort();
        else
            ExceptionDispatchInfo.Throw(failure);
    }

    private async Task StartAsync(ChannelWriter<Task<LineChunk>> started, CancellationToken stop)
    {
        try
        {
            while (true)
            {
                var chunk = free.TryDequeue(out var used) ? used : new LineChunk();
                if (!await questions.FillAsync(chunk, stop))
                    break;
                var answered = Task.Run(() => Answered(chunk, stop), stop);
                await started.WriteAsync(answered, stop);
            }
        }
        finally
        {
            started.Complete();
        }
    }

    private LineChunk Answered(LineChunk chunk, CancellationToken stop)
    {
        evaluate(chunk, stop);
        return chunk;
    }

    private async Task OrderAsync(ChannelReader<Task<LineChunk>> started, PipeWriter unread, CancellationToken stop)
    {
        unread.Write(answers.Head.Span);
        await foreach (var next in started.ReadAllAsync(stop))
        {
            var chunk = await next;
            unread.Write(chunk.Output.WrittenSpan);
            chunk.Clear();
            free.Enqueue(chunk);
            if ((await unread.FlushAsync(stop)).IsCompleted)
                throw new OperationCanceledException("The answers are no longer sent.");
        }

        // Only a whole answer ends; after a failure the sender is stopped.
        stop.ThrowIfCancellationRequested();
        await unread.CompleteAsync();
    }

    private static async Task SendAsync(PipeReader unread, HttpResponse response, CancellationToken stop)
    {
        try
        {
            await unread.CopyToAsync(response.BodyWriter, stop);
        }
        finally
        {
            await unread.CompleteAsync();
        }
    }
}
