using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The committed contract is the served one.</summary>
public sealed class CommittedContractTests
{
    [Fact]
    public async Task ServedDocument_ComparedWithTheCommittedFile_IsEqualByteForByte()
    {
        var served = await ServedContract.GetAsync();

        var committed = await File.ReadAllTextAsync(ContractUpdate.CommittedContract);

        Assert.True(
            served.Text == committed,
            $"The service serves another contract than openapi/v1.json holds, first at line {FirstDifference(committed, served.Text)}. {ContractUpdate.Advice}"
        );
    }

    [Fact]
    public async Task ServedDocument_AskedTwice_IsTheSame()
    {
        await using var service = new Service();
        var client = service.CreateClient();

        var first = await client.GetStringAsync(new Uri(ServedContract.Address, UriKind.Relative));
        var second = await client.GetStringAsync(new Uri(ServedContract.Address, UriKind.Relative));

        Assert.Equal(first, second);
    }

    [Fact]
    public void OperationIds_OfTheCommittedContract_AreUnique()
    {
        var ids = ContractDocument.Committed.Operations.Select(operation => operation.OperationId).ToArray();

        Assert.NotEmpty(ids);
        Assert.Equal(ids.Distinct(), ids);
    }

    private static int FirstDifference(string committed, string served) =>
        1 + committed.Split('\n').Zip(served.Split('\n')).TakeWhile(pair => pair.First == pair.Second).Count();
}
