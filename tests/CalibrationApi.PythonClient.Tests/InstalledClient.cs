using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using CalibrationApi.Testing;

namespace CalibrationApi.PythonClient.Tests;

/// <summary>A folder as a caller has it: an environment with the client installed and nothing else, and the scripts of the tests.</summary>
public sealed class InstalledClient : IAsyncLifetime
{
    private static readonly string[] Scripts = ["Python", "Service"];

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calibration-python-");

    /// <summary>Top folder.</summary>
    public string Folder => folder.FullName;

    private string Interpreter =>
        OperatingSystem.IsWindows()
            ? Path.Combine(Folder, "environment", "Scripts", "python.exe")
            : Path.Combine(Folder, "environment", "bin", "python");

    public async Task InitializeAsync()
    {
        // Where Python is missing every test is skipped, but fixtures are made all the same.
        if (Python.Missing is not null)
            return;
        await ClientSource.ReadyAsync();
        ClientSource.Succeeded(
            "There is no environment for the client.",
            await Command.RunAsync(Folder, Python.Executable, "-m", "venv", "environment")
        );
        ClientSource.Succeeded(
            "The client cannot be installed without a network.",
            await RunAsync("-m", "pip", "install", "--no-index", "--disable-pip-version-check", ClientSource.Folder)
        );
        foreach (
            var file in Scripts.SelectMany(name =>
                Directory.GetFiles(Repository.PathOf("tests", "CalibrationApi.PythonClient.Tests", name), "*.py")
            )
        )
            File.Copy(file, Path.Combine(Folder, Path.GetFileName(file)));
        await File.WriteAllTextAsync(Path.Combine(Folder, "certificate.pem"), CertificateOfThisMachine());
    }

    /// <summary>Runs the interpreter that has the client.</summary>
    public Task<Command> RunAsync(params IEnumerable<string> arguments) => Command.RunAsync(Folder, Interpreter, arguments);

    public Task DisposeAsync()
    {
        folder.Delete(recursive: true);
        return Task.CompletedTask;
    }

    private static string CertificateOfThisMachine()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=127.0.0.1", key, HashAlgorithmName.SHA256);
        var names = new SubjectAlternativeNameBuilder();
        names.AddIpAddress(IPAddress.Loopback);
        request.CertificateExtensions.Add(names.Build());
        using var certificate = request.CreateSelfSigned(DateTimeOffset.UtcNow.AddHours(-1), DateTimeOffset.UtcNow.AddDays(1));
        return $"{key.ExportPkcs8PrivateKeyPem()}\n{certificate.ExportCertificatePem()}\n";
    }
}

/// <summary>The client is installed once for all tests, which share no more than that.</summary>
[CollectionDefinition(Name)]
public sealed class OneInstallation : ICollectionFixture<InstalledClient>
{
    public const string Name = "installation";
}
