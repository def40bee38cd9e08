using System.Net.Http.Headers;
using CalibrationApi.Storage;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;

namespace CalibrationApi.Contract.Tests;

/// <summary>The service with keys, which some operations need; once there is one, every request shows it.</summary>
internal sealed partial class Service
{
    protected override IHost CreateHost(IHostBuilder builder)
    {
        var host = base.CreateHost(builder);
        SampleKeys.Insert(host.Services.GetRequiredService<CalibrationDatabase>(), Season.DayAfter);
        return host;
    }

    protected override void ConfigureClient(HttpClient client)
    {
        base.ConfigureClient(client);
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", SampleKeys.Text);
    }
}
