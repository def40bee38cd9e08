using System.Text.RegularExpressions;

namespace CalibrationApi.Architecture.Tests;

/// <summary>No test asks the service past the check of its answers against the contract.</summary>
public sealed partial class CheckedClientsTests
{
    // Files that may make a client without the check, each with its reason.
    private static readonly Dictionary<string, string> Meant = new()
    {
        ["tests/CalibrationApi.Testing/CheckedClient.cs"] = "Makes the client that checks.",
        ["tests/CalibrationApi.Tests/Hosting/Demo/LoadedSeason.cs"] = "Reads the contract that the check then uses.",
        ["tests/CalibrationApi.Contract.Tests/CommittedContractTests.cs"] = "Reads the contract itself.",
        ["tests/CalibrationApi.Contract.Tests/ServedContract.cs"] = "Reads the contract that the check then uses.",
        ["tests/CalibrationApi.Contract.Tests/ContractUpdate.cs"] = "Rewrites the contract, so there is none yet to check with.",
        ["tests/CalibrationApi.Contract.Tests/ProblemCalls.cs"] = "Captures what the contract shows; that is then checked as an example.",
        ["tests/CalibrationApi.Contract.Tests/Service.cs"] = "Loads the season before the contract is read.",
        ["tests/CalibrationApi.Contract.Tests/ContractCheckingHandlerTests.cs"] = "Tests the check itself.",
        ["tests/CalibrationApi.Tests/Plumbing/Batch/BatchStreamTests.cs"] =
            "Reads answers piece by piece and leaves them; the check reads them whole.",
        ["tests/CalibrationApi.Tests/Hosting/Pipeline/CompressedAnswersTests.cs"] =
            "Reads answers as they travel; the check reads them unpacked.",
        ["tests/CalibrationApi.Architecture.Tests/EndpointsTests.cs"] =
            "Asks every route for one refusal, whatever the contract says of it.",
    };

    [Fact]
    public void Clients_OfTests_CheckTheContract()
    {
        var bare = Bare();

        Assert.NotEmpty(bare);
        Assert.Empty(
            bare.Where(file => !Meant.ContainsKey(file))
                .Select(file =>
                    $"{file} makes a client past the contract. Use ApiHost.Client, CreateCheckedClient() or CheckedClient.Of(address)."
                )
        );
    }

    [Fact]
    public void Exceptions_EachIsStillNeeded() => Assert.Empty(Meant.Keys.Except(Bare()));

    private static string[] Bare() =>
        [
            .. SourceFile
                .In("tests")
                // Measurements ask for speed; tests assert what was answered.
                .Where(file => !file.Shown.StartsWith("tests/CalibrationApi.Benchmarks/", StringComparison.Ordinal))
                .Where(file => file.Name != "CheckedClientsTests.cs" && BareClient().IsMatch(Comment().Replace(file.Text, "")))
                .Select(file => file.Shown),
        ];

    // A client made by hand, or one of the factory without the handler.
    [GeneratedRegex(
        @"new HttpClient\b|HttpClient \w+ = new\(|new\(new ContractCheckingHandler|\.CreateClient\(|(?<![.\w])CreateClient\(|CreateDefaultClient\((?!\[?new ContractCheckingHandler)"
    )]
    private static partial Regex BareClient();

    [GeneratedRegex("//.*")]
    private static partial Regex Comment();
}
