using System.Net;
using CalibrationApi.Plumbing.Settings;
using Microsoft.Extensions.Configuration;

namespace CalibrationApi.Tests.Plumbing.Settings;

public sealed class CalibrationSettingsTests
{
    [Fact]
    public void Read_OfNothing_IsTheDefaultsOfAllSettings()
    {
        var (settings, faults) = Read();

        Assert.Empty(faults);
        Assert.Null(settings.Database);
        Assert.Empty(settings.Proxies);
        Assert.True(settings.LogsJson);
        Assert.Equal(1024 * 1024, settings.Limits.BodyBytes);
        Assert.Equal(6000, settings.Limits.RequestsPerMinutePerAddress);
        Assert.Equal(TimeSpan.FromSeconds(60), settings.Limits.RequestTime);
    }

    [Fact]
    public void Read_OfEverySettingWithAValueOfItsOwn_TakesAllOfThem()
    {
        var (settings, faults) = Read(
            ("Database", "farm.db"),
            ("Proxies", "10.0.0.5; 10.1.0.0/16;2001:db8::1"),
            ("Log", "text"),
            ("LeastFreeDiskMiB", "7"),
            ("Limits:BodyKiB", "32"),
            ("Limits:RequestSeconds", "5"),
            ("limits:connections", "12")
        );

        Assert.Empty(faults);
        Assert.Equal("farm.db", settings.Database);
        Assert.Equal(
            [IPNetwork.Parse("10.0.0.5/32"), IPNetwork.Parse("10.1.0.0/16"), IPNetwork.Parse("2001:db8::1/128")],
            settings.Proxies
        );
        Assert.False(settings.LogsJson);
        Assert.Equal(7 * 1024 * 1024, settings.LeastFreeDiskBytes);
        Assert.Equal(32 * 1024, settings.Limits.BodyBytes);
        Assert.Equal(TimeSpan.FromSeconds(5), settings.Limits.RequestTime);
        Assert.Equal(12, settings.Limits.Connections);
    }

    [Fact]
    public void Read_AtATerminal_LogsText()
    {
        Assert.False(Read(isAtATerminal: true).Settings.LogsJson);
        Assert.True(Read(isAtATerminal: true, ("Log", "json")).Settings.LogsJson);
    }

    [Theory]
    [InlineData(
        "Limits:BodyKiB",
        "much",
        "Calibration__Limits__BodyKiB is 'much'. It has to be a whole number from 16 to 65536, for example Calibration__Limits__BodyKiB=1024."
    )]
    [InlineData(
        "Limits:BodyKiB",
        "15",
        "Calibration__Limits__BodyKiB is '15'. It has to be a whole number from 16 to 65536, for example Calibration__Limits__BodyKiB=1024."
    )]
    [InlineData(
        "Limits:Connections",
        "1e3",
        "Calibration__Limits__Connections is '1e3'. It has to be a whole number from 1 to 100000, for example Calibration__Limits__Connections=1000."
    )]
    [InlineData(
        "Limits:Connections",
        "99999999999",
        "Calibration__Limits__Connections is '99999999999'. It has to be a whole number from 1 to 100000, for example Calibration__Limits__Connections=1000."
    )]
    [InlineData("Log", "xml", "Calibration__Log is 'xml'. It has to be json or text, for example Calibration__Log=json.")]
    [InlineData(
        "Proxies",
        "10.0.0.5;proxy",
        "Calibration__Proxies holds 'proxy'. Give addresses or networks, separated by semicolons, for example Calibration__Proxies=10.0.0.5;10.1.0.0/16."
    )]
    [InlineData(
        "Proxies",
        "0.0.0.0/0",
        "Calibration__Proxies holds '0.0.0.0/0'. Give addresses or networks, separated by semicolons, for example Calibration__Proxies=10.0.0.5;10.1.0.0/16."
    )]
    public void Read_OfAWrongValue_SaysWhichWhyAndWhatWouldDo(string name, string value, string sentence)
    {
        Assert.Equal([sentence], Read((name, value)).Faults);
    }

    [Theory]
    [InlineData("Limits:RequestsPerKey", "Calibration__Limits__RequestsPerKey")]
    [InlineData("BodyKiB", "Calibration__BodyKiB")]
    [InlineData("Limits:BodyKiB:Most", "Calibration__Limits__BodyKiB__Most")]
    public void Read_OfASettingThatNobodyKnows_IsAFault(string name, string shown)
    {
        var fault = Assert.Single(Read((name, "1")).Faults);

        Assert.StartsWith(
            $"{shown} is no setting of this service. Correct its name or remove it; there are: Calibration__Database, ",
            fault,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Read_OfSeveralFaults_TellsAllOfThem()
    {
        Assert.Equal(3, Read(("Log", "xml"), ("Limits:BodyKiB", "0"), ("Nothing", "1")).Faults.Count);
    }

    [Fact]
    public void All_OfEveryDefault_IsInItsRange()
    {
        var whole = CalibrationSettings.All.OfType<WholeSetting>().ToArray();

        Assert.True(whole.Length > 10);
        Assert.All(whole, setting => Assert.InRange(setting.Usual, setting.Least, setting.Most));
        Assert.Equal(
            CalibrationSettings.All.Count,
            CalibrationSettings.All.Select(setting => setting.Variable).Distinct(StringComparer.OrdinalIgnoreCase).Count()
        );
    }

    [Fact]
    public async Task Start_WithWrongSettings_EndsWithASentenceForEach()
    {
        await using var service = ServiceProcess.Start(
            "--urls",
            "http://127.0.0.1:0",
            "--Calibration:Limits:BodyKiB",
            "much",
            "--Calibration:Limit:BodyKiB",
            "64"
        );

        var (exitCode, errors) = await service.EndAsync();

        Assert.NotEqual(0, exitCode);
        var lines = errors.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, lines.Length);
        Assert.All(lines, line => Assert.StartsWith("Refusing to start: Calibration__Limit", line, StringComparison.Ordinal));
    }

    private static (CalibrationSettings Settings, List<string> Faults) Read(params (string Name, string Value)[] values) =>
        Read(false, values);

    private static (CalibrationSettings Settings, List<string> Faults) Read(bool isAtATerminal, params (string Name, string Value)[] values)
    {
        var faults = new List<string>();
        var configuration = new ConfigurationBuilder()
            .AddInMemoryCollection(values.Select(one => KeyValuePair.Create("Calibration:" + one.Name, (string?)one.Value)))
            .Build();
        return (CalibrationSettings.Read(configuration, isAtATerminal, faults), faults);
    }
}
