using System.Collections.Concurrent;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Observability;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;

namespace CalibrationApi.Tests.Plumbing.Observability;

/// <summary>Keeps what a host logs as the lines that its console would show.</summary>
internal sealed class LogLines : ILoggerProvider
{
    private readonly JsonLogFormatter formatter = new();
    private readonly ConcurrentQueue<string> lines = new();

    public IReadOnlyCollection<string> All => lines;

    /// <summary>The lines of requests, in order.</summary>
    public IReadOnlyList<JsonNode> Requests =>
        [.. lines.Select(line => JsonNode.Parse(line)!).Where(line => line["category"]!.GetValue<string>() == RequestLog.Category)];

    public ILogger CreateLogger(string categoryName) => new Writer(categoryName, this);

    public void Dispose() { }

    private sealed class Writer(string category, LogLines all) : ILogger
    {
        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(
            LogLevel logLevel,
            EventId eventId,
            TState state,
            Exception? exception,
            Func<TState, Exception?, string> formatter
        )
        {
            using var line = new StringWriter();
            all.formatter.Write(new LogEntry<TState>(logLevel, category, eventId, state, exception, formatter), null, line);
            all.lines.Enqueue(line.ToString());
        }
    }
}
