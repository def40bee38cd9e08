using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace CalibrationApi.Http;

/// <summary>How JSON is read and written: strictly in, without nulls out.</summary>
internal static class JsonSettings
{
    public const int MaxDepth = 32;

    /// <summary>The answers are read as JSON, never pasted into a page; the units % and / and the sign ± stay readable in a terminal.</summary>
    public static JavaScriptEncoder Encoder { get; } = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;

    /// <summary>For trees that are put together here rather than read from a contract type.</summary>
    public static JsonSerializerOptions Writing { get; } = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, TypeInfoResolver = new DefaultJsonTypeInfoResolver() };

    /// <summary>The options of the border, for stored bodies that are contract types.</summary>
    public static JsonSerializerOptions Contract { get; } = MakeContract();

    private static JsonSerializerOptions MakeContract()
    {
        var options = new JsonSerializerOptions(JsonSerializerDefaults.Web);
        Apply(options);
        return options;
    }

    public static void Apply(JsonSerializerOptions options)
    {
        options.TypeInfoResolverChain.Clear();
        options.TypeInfoResolver = JsonTypeInfoResolver.Combine(ContractJson.Default);
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
