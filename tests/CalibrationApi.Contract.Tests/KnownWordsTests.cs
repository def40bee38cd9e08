using CalibrationApi.Engine.Answers;
using CalibrationApi.Reference.Codes;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>The contract tells the words that answers can hold.</summary>
public sealed class KnownWordsTests
{
    [Fact]
    public void Codes_OfEveryAnswer_AreListed()
    {
        var codes = ContractDocument.Committed.Json["components"]!["schemas"]!
            .AsObject()
            .Select(schema => (schema.Key, Code: schema.Value!["properties"]?["code"]))
            // The list of codes is itself what lists them.
            .Where(schema => schema.Code is not null && schema.Key != nameof(CodeAnswer))
            .ToArray();

        Assert.NotEmpty(codes);
        Assert.All(codes, schema =>
            Assert.True(schema.Code!["examples"]?.AsArray().Count > 0, $"{schema.Key}.code lists no words. Use [KnownWords].")
        );
    }

    [Fact]
    public void Codes_OfCautions_HoldThoseOfTheEngine()
    {
        var listed = ContractDocument.Committed.Json["components"]!["schemas"]!["CautionAnswer"]!["properties"]!["code"]!["examples"]!
            .AsArray()
            .Select(code => code!.GetValue<string>());

        Assert.NotEmpty(Caution.AtTheMachine);
        Assert.Empty(Caution.AtTheMachine.Select(caution => caution.Code.Word).Except(listed));
    }

    [Fact]
    public void Descriptions_OfMembersWithKnownWords_NameEachOfThem()
    {
        var members = ContractDocument.Committed.Json["components"]!["schemas"]!
            .AsObject()
            .SelectMany(schema => schema.Value!["properties"]?.AsObject() ?? [])
            .Where(member => member.Value!["examples"] is not null && member.Key != "unit")
            .Select(member => member.Value!)
            .ToArray();

        Assert.NotEmpty(members);
        Assert.All(members, member =>
            Assert.All(member["examples"]!.AsArray(), word =>
                Assert.Contains($"`{word!.GetValue<string>()}`", member["description"]!.GetValue<string>(), StringComparison.Ordinal)
            )
        );
    }
}
