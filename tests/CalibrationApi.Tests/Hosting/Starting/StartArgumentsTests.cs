using CalibrationApi.Hosting.Starting;

namespace CalibrationApi.Tests.Hosting.Starting;

/// <summary>What may stand behind the name of the program.</summary>
public sealed class StartArgumentsTests
{
    [Theory]
    [InlineData("")]
    [InlineData("--demo")]
    [InlineData("--urls http://localhost:5001 --demo")]
    [InlineData("--urls=http://localhost:5001")]
    [InlineData("--environment=Development --contentRoot=/srv --applicationName=CalibrationApi")]
    [InlineData("--Calibration:Database /srv/one.db --Logging:LogLevel:Default Warning")]
    [InlineData("--OTEL_SERVICE_NAME=seeding")]
    public void Answer_KnownArguments_LetsTheServiceStart(string arguments)
    {
        var (exitCode, output, errors) = Answer(arguments);

        Assert.Null(exitCode);
        Assert.Empty(output + errors);
    }

    [Theory]
    [InlineData("--demp", "there is no switch '--demp'. Was --demo meant?")]
    [InlineData("--url http://localhost:1", "there is no switch '--url'. Was --urls meant?")]
    [InlineData("--database x.db", "there is no switch '--database'.")]
    [InlineData("--Calibration: x", "there is no switch '--Calibration:'.")]
    [InlineData("demo", "'demo' is no switch and belongs to none.")]
    [InlineData("-demo", "'-demo' is no switch and belongs to none.")]
    [InlineData("--demo true", "'true' is no switch and belongs to none.")]
    [InlineData("--urls", "'--urls' needs a value behind it.")]
    [InlineData("--urls --demo", "'--urls' needs a value behind it.")]
    public void Answer_AnUnknownArgument_RefusesToStart(string arguments, string told)
    {
        var (exitCode, output, errors) = Answer(arguments);

        Assert.Equal(1, exitCode);
        Assert.Empty(output);
        Assert.Equal($"Refusing to start: {told} --help lists what there is.", errors.TrimEnd());
    }

    [Theory]
    [InlineData("--help")]
    [InlineData("-h")]
    [InlineData("--demp --help")]
    public void Answer_Help_PrintsWhatThereIs(string arguments)
    {
        var (exitCode, output, errors) = Answer(arguments);

        Assert.Equal(0, exitCode);
        Assert.Empty(errors);
        Assert.All(["--urls", "--demo", "--Calibration:", "keys create"], word => Assert.Contains(word, output, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Start_WithAMistypedSwitch_EndsBeforeAnyDatabaseIsMade()
    {
        await using var service = ServiceProcess.Start("--demp");

        var (exitCode, errors) = await service.EndAsync();

        Assert.Equal(1, exitCode);
        Assert.Contains("Was --demo meant?", errors, StringComparison.Ordinal);
        Assert.False(File.Exists(service.Database));
    }

    private static (int? ExitCode, string Output, string Errors) Answer(string arguments)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var exitCode = StartArguments.Answer(arguments.Split(' ', StringSplitOptions.RemoveEmptyEntries), output, errors);
        return (exitCode, output.ToString(), errors.ToString());
    }
}
