using System.Buffers;
using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json;
using CalibrationApi.Plumbing.Http;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Logging.Console;

namespace CalibrationApi.Plumbing.Observability;

/// <summary>
/// Writes each entry of the log as one JSON object on one line, with the trace id under which a client reports a failure.
/// </summary>
/// <remarks>
/// The formatter of the framework adds the scopes of a request, which hold its path as it was sent; what is in a path is not ours to log.
/// </remarks>
internal sealed class JsonLogFormatter() : ConsoleFormatter(FormatterName)
{
    public const string FormatterName = "calibration-json";

    private const string Template = "{OriginalFormat}";

    private static readonly ConcurrentDictionary<string, JsonEncodedText> Names = new();

    public override void Write<TState>(in LogEntry<TState> logEntry, IExternalScopeProvider? scopeProvider, TextWriter textWriter)
    {
        var line = WrittenJson.Take();
        try
        {
            Write(line.Json, logEntry);
            line.Json.Flush();
            WriteLine(line.Bytes.Span, textWriter);
        }
        finally
        {
            line.GiveBack();
        }
    }

    private static void Write<TState>(Utf8JsonWriter json, in LogEntry<TState> logEntry)
    {
        json.WriteStartObject();
        json.WriteString("time"u8, DateTimeOffset.UtcNow);
        json.WriteString("level"u8, NameOf(logEntry.LogLevel));
        json.WriteString("category"u8, logEntry.Category);
        json.WriteString("message"u8, logEntry.Formatter(logEntry.State, logEntry.Exception));
        if (Activity.Current is { } activity)
            json.WriteString("traceId"u8, activity.TraceId.ToHexString());
        if (logEntry.State is IReadOnlyList<KeyValuePair<string, object?>> parts)
        {
            for (var i = 0; i < parts.Count; i++)
            {
                if (parts[i] is ({ } name, { } value) && name != Template)
                    Write(json, name, value);
            }
        }

        if (logEntry.Exception is { } exception)
            json.WriteString("exception"u8, exception.ToString());
        json.WriteEndObject();
    }

    private static void WriteLine(ReadOnlySpan<byte> line, TextWriter textWriter)
    {
        var text = ArrayPool<char>.Shared.Rent(line.Length);
        textWriter.WriteLine(text.AsSpan(0, Encoding.UTF8.GetChars(line, text)));
        ArrayPool<char>.Shared.Return(text);
    }

    // The names of a message's parts begin with a capital; those of an entry do not. There are as many as messages in the code have.
    private static void Write(Utf8JsonWriter json, string name, object value)
    {
        json.WritePropertyName(Names.GetOrAdd(name, static part => JsonEncodedText.Encode(JsonNamingPolicy.CamelCase.ConvertName(part))));
        switch (value)
        {
            case int whole:
                json.WriteNumberValue(whole);
                break;
            case double number when double.IsFinite(number):
                json.WriteNumberValue(number);
                break;
            default:
                json.WriteStringValue(Convert.ToString(value, CultureInfo.InvariantCulture));
                break;
        }
    }

    private static string NameOf(LogLevel level) =>
        level switch
        {
            LogLevel.Trace => "trace",
            LogLevel.Debug => "debug",
            LogLevel.Information => "information",
            LogLevel.Warning => "warning",
            LogLevel.Error => "error",
            _ => "critical",
        };
}
