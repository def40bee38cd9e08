using System.Buffers;
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

    private static readonly JsonWriterOptions Writing = new() { Encoder = JsonSettings.Encoder };

    public override void Write<TState>(in LogEntry<TState> logEntry, IExternalScopeProvider? scopeProvider, TextWriter textWriter)
    {
        var line = new ArrayBufferWriter<byte>(512);
        using (var json = new Utf8JsonWriter(line, Writing))
        {
            json.WriteStartObject();
            json.WriteString("time", DateTimeOffset.UtcNow);
            json.WriteString("level", NameOf(logEntry.LogLevel));
            json.WriteString("category", logEntry.Category);
            json.WriteString("message", logEntry.Formatter(logEntry.State, logEntry.Exception));
            if (Activity.Current is { } activity)
                json.WriteString("traceId", activity.TraceId.ToHexString());
            foreach (var (name, value) in logEntry.State as IReadOnlyList<KeyValuePair<string, object?>> ?? [])
            {
                if (name != Template && value is not null)
                    Write(json, name, value);
            }

            if (logEntry.Exception is { } exception)
                json.WriteString("exception", exception.ToString());
            json.WriteEndObject();
        }

        textWriter.WriteLine(Encoding.UTF8.GetString(line.WrittenSpan));
    }

    // The names of a message's parts begin with a capital; those of an entry do not.
    private static void Write(Utf8JsonWriter json, string name, object value)
    {
        json.WritePropertyName(JsonNamingPolicy.CamelCase.ConvertName(name));
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
