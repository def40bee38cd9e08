using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace CalibrationApi.Plumbing.Http;

/// <summary>How JSON is read and written: strictly in, without nulls out.</summary>
internal static class JsonSettings
{
    public const int MaxDepth = 32;

    private static readonly Lazy<JsonSerializerOptions> OfBorder = new(MakeContract);

    /// <summary>
    /// The answers are read as JSON, never pasted into a page; the units % and / and the sign ± stay readable in a terminal.
    /// </summary>
    public static JavaScriptEncoder Encoder { get; } = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;

    /// <summary>For trees that are put together here rather than read from a contract type.</summary>
    public static JsonSerializerOptions Writing { get; } =
        new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, TypeInfoResolver = new DefaultJsonTypeInfoResolver() };

    /// <summary>The options of the border, for stored bodies that are contract types.</summary>
    public static JsonSerializerOptions Contract => OfBorder.Value;

    /// <summary>Says which types cross the border; set once, before anything else runs.</summary>
    public static Func<JsonSerializerContext[]> Contexts { private get; set; } = () => [];

    private static Lazy<JsonSerializerContext[]> Known { get; } = new(() => [ProblemJson.Default, .. Contexts()]);

    /// <summary>How a contract type is written by the code generated for it.</summary>
    /// <remarks>The options of the border cannot use that code, because they carry an encoder.</remarks>
    public static JsonTypeInfo<T> Generated<T>() =>
        Known.Value.Select(context => context.GetTypeInfo(typeof(T))).OfType<JsonTypeInfo<T>>().FirstOrDefault()
        ?? throw new InvalidOperationException($"No context knows how {typeof(T).Name} is written.");

    private static JsonSerializerOptions MakeContract()
    {
        var options = new JsonSerializerOptions(JsonSerializerDefaults.Web);
        Apply(options);
        return options;
    }

    public static void Apply(JsonSerializerOptions options)
    {
        options.TypeInfoResolverChain.Clear();
        options.TypeInfoResolver = JsonTypeInfoResolver.Combine(Known.Value);
        options.PropertyNamingPolicy = JsonNamingPolicy.CamelCase;
        options.PropertyNameCaseInsensitive = false;
        options.NumberHandling = JsonNumberHandling.Strict;
        options.UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow;
        options.AllowDuplicateProperties = false;
        options.DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull;
        options.MaxDepth = MaxDepth;
        options.Encoder = Encoder;
    }
}
