using System.Buffers;
using CalibrationApi.Plumbing.Batch;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;

namespace CalibrationApi.Tests.Plumbing.Batch;

public sealed class BatchAnswerTests
{
    private const int Chunks = 2000;
    private const int AnswerLength = 64 * 1024;

    [Fact]
    public async Task Execute_AnswersThatNobodyReads_StopTheReadingOfQuestions()
    {
        var questions = new ManyQuestions();
        var client = new SlowClient();
        var context = new DefaultHttpContext();
        context.Features.Set<IHttpResponseBodyFeature>(new StreamResponseBodyFeature(client));
        var running = new BatchAnswer(questions, new NdjsonAnswers(), (chunk, _) =>
            chunk.Output.Write(new byte[AnswerLength])
        ).ExecuteAsync(context);

        // Far more is asked than may wait; if nothing held the reading up, it would soon be through.
        await client.Asked;
        await Task.WhenAny(questions.AllRead, Task.Delay(TimeSpan.FromMilliseconds(500)));
        var readWhileNobodyTookAnswers = questions.Read;
        client.Go();
        await running;

        Assert.InRange(readWhileNobodyTookAnswers, 1, Chunks / 4);
        Assert.Equal(Chunks, questions.Read);
        Assert.Equal((long)Chunks * AnswerLength, client.Received);
    }

    [Fact]
    public async Task Execute_QuestionsThatCannotBeRead_FailWhenNothingWasAnsweredYet()
    {
        var context = new DefaultHttpContext();

        await Assert.ThrowsAsync<BadHttpRequestException>(() =>
            new BatchAnswer(new BrokenQuestions(), new NdjsonAnswers(), (_, _) => { }).ExecuteAsync(context)
        );
    }

    private sealed class ManyQuestions : LineReader
    {
        private readonly TaskCompletionSource allRead = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private int read;

        public int Read => Volatile.Read(ref read);

        public Task AllRead => allRead.Task;

        public override ValueTask<bool> FillAsync(LineChunk chunk, CancellationToken stop)
        {
            if (read == Chunks)
            {
                allRead.TrySetResult();
                return new(false);
            }

            read++;
            chunk.Add(read, new ReadOnlySequence<byte>("{}"u8.ToArray()));
            return new(true);
        }
    }

    private sealed class BrokenQuestions : LineReader
    {
        public override ValueTask<bool> FillAsync(LineChunk chunk, CancellationToken stop) =>
            throw new BadHttpRequestException("The body is too slow.", StatusCodes.Status408RequestTimeout);
    }

    /// <summary>Takes nothing until it is told to.</summary>
    private sealed class SlowClient : Stream
    {
        private readonly TaskCompletionSource asked = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private readonly TaskCompletionSource go = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public Task Asked => asked.Task;

        public long Received { get; private set; }

        public override bool CanRead => false;

        public override bool CanSeek => false;

        public override bool CanWrite => true;

        public override long Length => throw new NotSupportedException();

        public override long Position
        {
            get => throw new NotSupportedException();
            set => throw new NotSupportedException();
        }

        public void Go() => go.SetResult();

        public override async ValueTask WriteAsync(ReadOnlyMemory<byte> buffer, CancellationToken cancellationToken = default)
        {
            asked.TrySetResult();
            await go.Task.WaitAsync(cancellationToken);
            Received += buffer.Length;
        }

        public override Task FlushAsync(CancellationToken cancellationToken) => Task.CompletedTask;

        public override void Flush()
        {
            // Nothing is kept back.
        }

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
