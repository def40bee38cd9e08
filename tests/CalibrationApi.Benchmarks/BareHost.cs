using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace CalibrationApi.Benchmarks;

/// <summary>A program that does nothing but listen, read a body and answer: what the framework costs by itself.</summary>
internal static class BareHost
{
    /// <summary>The argument that makes this program it.</summary>
    public const string Word = "bare-host";

    public static async Task<int> RunAsync()
    {
        var builder = WebApplication.CreateBuilder();
        await using var app = builder.Build();
        app.MapPost("/{**path}", async (HttpRequest request, HttpResponse response) =>
        {
            await request.Body.CopyToAsync(Stream.Null);
            response.ContentLength = 2;
            await response.WriteAsync("{}");
        });
        await app.RunAsync();
        return 0;
    }
}
