using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace CalibrationApi.Tests;

/// <summary>Keeps what a host logs.</summary>
internal sealed class LogEntries : ILoggerProvider
{
    private readonly ConcurrentQueue<LogEntry> entries = new();

    public IReadOnlyCollection<LogEntry> All => entries;

    public ILogger CreateLogger(string categoryName) => new Writer(categoryName, entries);

    public void Dispose() { }

    private sealed class Writer(string category, ConcurrentQueue<LogEntry> entries) : ILogger
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
        ) => entries.Enqueue(new LogEntry(logLevel, category, formatter(state, exception), exception));
    }
}

internal sealed record LogEntry(LogLevel Level, string Category, string Text, Exception? Exception);
