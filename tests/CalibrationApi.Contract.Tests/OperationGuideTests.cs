using System.Text.RegularExpressions;
using CalibrationApi.Plumbing.Settings;
using CalibrationApi.Storage;
using CalibrationApi.Storage.OneWriter;
using CalibrationApi.Testing;
using Dapper;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Contract.Tests;

/// <summary>What the page for operators tells is what the service does.</summary>
public sealed partial class OperationGuideTests
{
    private const string Name = "src/CalibrationApi/README.md";

    private static readonly string Guide = Page.At(Name).Text;

    [Fact]
    public void SettingsTable_OfTheGuide_IsWhatTheServiceReads() =>
        WrittenTable.HoldTo(
            Name,
            "| setting | default | may be | meaning |",
            CalibrationSettings.All.Select(setting => $"| `{setting.Variable}` | {setting.Default} | {setting.Range} | {setting.Meaning} |")
        );

    [Fact]
    public void Settings_NamedOnAnyPage_Exist()
    {
        var named = Page.All.SelectMany(page => SettingName().Matches(page.Text)).Select(match => match.Value).Distinct().ToArray();

        Assert.True(named.Length > 10);
        Assert.Empty(named.Except(CalibrationSettings.All.Select(setting => setting.Variable)));
    }

    [Fact]
    public void Unit_ForSystemd_StartsTheServiceWithSettingsThatItTakes()
    {
        var unit = Block("ini").Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var values = unit.Where(line => line.Contains('=', StringComparison.Ordinal))
            .Select(line => line.Split('=', 2))
            .ToLookup(pair => pair[0], pair => pair[1]);
        var environment = values["Environment"].Select(setting => setting.Split('=', 2)).ToDictionary(pair => pair[0], pair => pair[1]);
        var faults = new List<string>();

        // Published, the program has the name of its assembly.
        var program = Assert.Single(values["ExecStart"]);
        Assert.Equal(typeof(Program).Assembly.GetName().Name, Path.GetFileName(program));
        var folder = Path.GetDirectoryName(program);
        Assert.Contains($"dotnet publish src/CalibrationApi -c Release -o {folder}`", Guide, StringComparison.Ordinal);
        var given = environment.ToDictionary(pair => pair.Key.Replace("__", ":", StringComparison.Ordinal), pair => (string?)pair.Value);
        var configuration = new ConfigurationBuilder().AddInMemoryCollection(given).Build();
        var settings = CalibrationSettings.Read(configuration, isAtATerminal: false, faults);
        Assert.Empty(faults);
        Assert.StartsWith($"/var/lib/{Assert.Single(values["StateDirectory"])}/", settings.Database, StringComparison.Ordinal);
        Assert.NotEmpty(settings.Proxies);
        // The proxy asks where the unit lets the service listen.
        Assert.Contains($"proxy_pass {environment["ASPNETCORE_URLS"]};", Block("nginx"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Backup_AsTheGuideSaysWhileTheServiceWrites_HoldsEverythingAcknowledgedBefore()
    {
        var sql = Assert.Single(BackupCommand().Matches(Guide)).Groups["sql"].Value;
        var copy = Path.Combine(Directory.CreateTempSubdirectory("calibration-backup-").FullName, "copy.db");
        await using var service = new Service();
        var writer = service.Services.GetRequiredService<SingleWriter>();
        for (var i = 0; i < 50; i++)
            await WriteAsync(writer, i);
        using var stop = new CancellationTokenSource();
        var writing = Task.Run(async () =>
        {
            for (var i = 50; !stop.IsCancellationRequested; i++)
                await WriteAsync(writer, i);
        });

        using (var connection = service.Services.GetRequiredService<CalibrationDatabase>().Open())
            connection.Execute(BackupPath().Replace(sql, $"'{copy}'"));
        await stop.CancelAsync();
        await writing;

        using (var restored = new CalibrationDatabase(copy))
        {
            restored.Prepare();
            using var connection = restored.Open();
            Assert.Equal("ok", connection.QuerySingle<string>("pragma integrity_check"));
            var acknowledged = connection.QuerySingle<int>(
                "select count(*) from idempotency_keys where route = 'POST /backup' and cast(key as integer) < 50"
            );
            Assert.Equal(50, acknowledged);
        }

        Directory.Delete(Path.GetDirectoryName(copy)!, recursive: true);
    }

    private static Task<bool> WriteAsync(SingleWriter writer, int number) => writer.WriteAsync(connection => Insert(connection, number));

    private static bool Insert(SqliteConnection connection, int number)
    {
        var answer = new StoredAnswer(201, null, null, []);
        IdempotencyKeys.Remember(connection, "local", "POST /backup", $"{number}", "", answer, DateTimeOffset.UtcNow);
        return true;
    }

    private static string Block(string kind) => Guide.Split($"```{kind}\n")[1].Split("```")[0];

    [GeneratedRegex("Calibration__[A-Za-z_]*[A-Za-z]")]
    private static partial Regex SettingName();

    [GeneratedRegex("^sqlite3 \\S+ \"(?<sql>[^\"]+)\"$", RegexOptions.Multiline)]
    private static partial Regex BackupCommand();

    [GeneratedRegex("'[^']+'")]
    private static partial Regex BackupPath();
}
