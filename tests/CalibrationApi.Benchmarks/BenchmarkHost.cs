using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;

// The service runs from the folder of the benchmarks, wherever that was copied to.
[assembly: WebApplicationFactoryContentRoot("CalibrationApi", ".", "CalibrationApi.dll", "1")]

namespace CalibrationApi.Benchmarks;

/// <summary>
/// The real service on a real socket, with one address more: a bare one that reads a body and writes one of a given length.
/// </summary>
internal sealed class BenchmarkHost : WebApplicationFactory<Program>
{
    public const string BarePath = "/bare";

    private readonly string folder = Directory.CreateTempSubdirectory("calibration-benchmarks-").FullName;
    private readonly bool isLogged;
    private byte[] bareAnswer = [];

    /// <param name="isLogged">It writes its log, into a file, as a service does.</param>
    public BenchmarkHost(bool isLogged = false)
    {
        this.isLogged = isLogged;
        UseKestrel(0);
        var terminal = Console.Out;
        if (isLogged)
            Console.SetOut(new StreamWriter(Path.Combine(folder, "log")) { AutoFlush = true });
        StartServer();
        Console.SetOut(terminal);
        Address = ClientOptions.BaseAddress;
    }

    public Uri Address { get; }

    public IPEndPoint EndPoint => new(IPAddress.Loopback, Address.Port);

    /// <summary>The bare address answers as many bytes as this.</summary>
    public void AnswerBarely(int bytes)
    {
        bareAnswer = new byte[bytes];
        Array.Fill(bareAnswer, (byte)'x');
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder) =>
        builder
            .UseEnvironment("Production")
            .UseSetting("Calibration:Database", Path.Combine(folder, "calibration.db"))
            // Counted as always, but never refused: a load is what a benchmark makes.
            .UseSetting("Calibration:Limits:RequestsPerMinuteLocal", "100000000")
            .UseSetting("Calibration:Log", isLogged ? "json" : "text")
            .ConfigureServices(services => services.AddSingleton<IStartupFilter>(new BareAddress(this)));

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && Directory.Exists(folder))
            Directory.Delete(folder, recursive: true);
    }

    // Stands before everything of the service: no routing, no checks, no headers but the two that any answer needs.
    private sealed class BareAddress(BenchmarkHost host) : IStartupFilter
    {
        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) =>
            app =>
            {
                app.Map(BarePath, bare => bare.Run(async context =>
                    {
                        while (true)
                        {
                            var read = await context.Request.BodyReader.ReadAsync();
                            context.Request.BodyReader.AdvanceTo(read.Buffer.End);
                            if (read.IsCompleted)
                                break;
                        }

                        context.Response.ContentType = "application/json; charset=utf-8";
                        context.Response.ContentLength = host.bareAnswer.Length;
                        await context.Response.Body.WriteAsync(host.bareAnswer);
                    }));
                next(app);
            };
    }
}
