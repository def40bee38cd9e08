using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Tests;

/// <summary>An error answer. Reading one checks everything that holds for every error of this service.</summary>
internal sealed partial class ProblemBody
{
    // Which of them an operation can send is held to the contract with every answer.
    private static readonly HashSet<string> KnownCodes =
    [
        .. CodesOf.Service().Select(one => one.Code).Where(code => code is ErrorCode or RefusalCode).Select(code => code.Word),
    ];

    // Names with a single hump, such as Mass, are also English words.
    private static readonly HashSet<string> TypeNames =
    [
        .. new[] { typeof(Program).Assembly, typeof(Refusal).Assembly }
            .SelectMany(assembly => assembly.GetTypes())
            .Select(type => type.Name.Split('`')[0])
            .Where(name => SeveralHumps().IsMatch(name)),
        "String",
        "Double",
        "Int32",
        "Boolean",
        "Nullable",
        "IReadOnlyList",
        "ArgumentException",
        "InvalidOperationException",
        "JsonException",
    ];

    private ProblemBody(JsonElement root, string text)
    {
        Text = text;
        Status = root.GetProperty("status").GetInt32();
        Detail = root.GetProperty("detail").GetString()!;
        TraceId = root.GetProperty("traceId").GetString()!;
        Title = root.GetProperty("title").GetString()!;
        Type = root.GetProperty("type").GetString()!;
        ViolatedPolicies = root.TryGetProperty("violated-policies", out var policies)
            ? [.. policies.EnumerateArray().Select(policy => policy.GetString()!)]
            : [];
        Faults = [.. root.GetProperty("errors").EnumerateArray().Select(Fault.Read)];
    }

    public string Text { get; }

    public int Status { get; }

    public string Type { get; }

    public string Title { get; }

    /// <summary>The limits that were exceeded; none with any other problem.</summary>
    public IReadOnlyList<string> ViolatedPolicies { get; }

    public string Detail { get; }

    public string TraceId { get; }

    public IReadOnlyList<Fault> Faults { get; }

    public static async Task<ProblemBody> ReadAsync(HttpResponseMessage response, int status)
    {
        var text = await response.Content.ReadAsStringAsync();
        Assert.True((int)response.StatusCode == status, $"Expected {status}, got {(int)response.StatusCode}: {text}");
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.ToString());
        Assert.Equal("nosniff", Assert.Single(response.Headers.GetValues("X-Content-Type-Options")));
        using var document = JsonDocument.Parse(text);
        var problem = new ProblemBody(document.RootElement, text);
        problem.CheckAll(response.StatusCode);
        return problem;
    }

    /// <summary>The one fault that a question with one mistake has.</summary>
    public Fault Only() => Assert.Single(Faults);

    private void CheckAll(HttpStatusCode status)
    {
        Assert.Equal((int)status, Status);
        Assert.True(Type == "about:blank" || RegisteredType().IsMatch(Type), Type);
        Assert.Equal(status == HttpStatusCode.TooManyRequests, ViolatedPolicies.Count > 0);
        Assert.False(string.IsNullOrWhiteSpace(Title));
        Assert.False(string.IsNullOrWhiteSpace(TraceId));
        Assert.NotEmpty(Faults);
        CheckSentence(Detail);
        foreach (var fault in Faults)
        {
            Assert.Contains(fault.Code, KnownCodes);
            Assert.Matches(KebabCase(), fault.Code);
            Assert.True(
                fault.Pointer is null || fault.Pointer == "#" || fault.Pointer.StartsWith("#/", StringComparison.Ordinal),
                fault.Pointer
            );
            CheckSentence(fault.Detail);
            Assert.True(SaysWhatToDo().IsMatch(fault.Detail), $"This says not what to do: {fault.Detail}");
        }

        Assert.DoesNotMatch(Internals(), Text);
        Assert.DoesNotContain(Word().Matches(Text).Select(match => match.Value), TypeNames.Contains);
    }

    private static void CheckSentence(string sentence)
    {
        Assert.EndsWith(".", sentence, StringComparison.Ordinal);
        Assert.False(char.IsLower(sentence[0]), sentence);
    }

    [GeneratedRegex("^[a-z]+(-[a-z]+)*$")]
    private static partial Regex KebabCase();

    [GeneratedRegex("^[A-Z][a-z0-9]+([A-Z][a-z0-9]*)+$")]
    private static partial Regex SeveralHumps();

    [GeneratedRegex(@"\w+")]
    private static partial Regex Word();

    // Namespaces, exceptions, lines of a stack trace, source files, generic type names.
    [GeneratedRegex(@"System\.|Microsoft\.|CalibrationApi|FluentValidation|Exception|\bat [A-Z]\w*\.|\.cs\b|`\d")]
    private static partial Regex Internals();

    [GeneratedRegex("^https://iana.org/assignments/http-problem-types#(quota-exceeded|temporary-reduced-capacity)$")]
    private static partial Regex RegisteredType();

    // A verb that tells the sender what to do, or the bound that the value has to meet.
    [GeneratedRegex(
        @"\b([Aa]dd|Accept|Adopt|Ask|Check|Give|Keep|Leave|Let|[Ll]ook|Make|Read|Save|Send|Shorten|Split|Start|Supersede|Try|Use|Wait|Weigh|Widen|Write|has to be|takes one of|needed here|The Allow header lists|The contract is at)\b"
    )]
    private static partial Regex SaysWhatToDo();
}

/// <summary>One error of an error answer.</summary>
internal sealed record Fault(string? Pointer, string? Parameter, string Code, string Detail)
{
    /// <summary>Row and column of a table.</summary>
    public (long Row, string? Column)? Place { get; private init; }

    public static Fault Read(JsonElement element) =>
        new(
            element.TryGetProperty("pointer", out var pointer) ? pointer.GetString() : null,
            element.TryGetProperty("parameter", out var parameter) ? parameter.GetString() : null,
            element.GetProperty("code").GetString()!,
            element.GetProperty("detail").GetString()!
        )
        {
            Place = element.TryGetProperty("row", out var row)
                ? (row.GetInt64(), element.TryGetProperty("column", out var column) ? column.GetString() : null)
                : null,
        };
}
