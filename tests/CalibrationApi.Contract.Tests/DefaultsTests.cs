using System.Globalization;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>What the contract says is used when a member is left out is what answers say was used.</summary>
public sealed class DefaultsTests
{
    // What an answer assumes that is no member which could be stated, each with its reason.
    private static readonly Dictionary<string, string> NoMembers = new()
    {
        ["scaleLimit"] = "Comes from the class or the division of the scale.",
        ["scaleError"] = "Comes from a check of the scale.",
        ["leastCatch"] = "Is set aside by the material, not by a number.",
        ["container"] = "Is a whole container.",
    };

    public static TheoryData<string> Calculations =>
        [
            .. ContractDocument
                .Committed.Operations.Where(operation =>
                    operation is { Method: "POST" }
                    && operation.Path.StartsWith("/v1/calculations/", StringComparison.Ordinal)
                    && operation.AnswerExample?["assumptions"] is not null
                )
                .Select(operation => operation.OperationId),
        ];

    [Theory]
    [MemberData(nameof(Calculations))]
    public async Task Assumptions_OfAQuestionThatStatesNoDefaults_AreThoseOfTheContract(string operationId)
    {
        var contract = await ServedContract.GetAsync();
        var operation = contract.Operation(operationId);
        var question = operation.RequestExample!.DeepClone();
        LeaveOut(contract.Document, operation.RequestSchema!, question);

        using var request = ExampleCalls.With(operation, question);
        using var response = await contract.Client.SendAsync(request);

        var text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, text);
        var assumptions = JsonNode.Parse(text)!["assumptions"]!.AsArray().Where(one => !NoMembers.ContainsKey(Name(one!))).ToArray();
        Assert.NotEmpty(assumptions);
        Assert.All(assumptions, assumption => AssertTold(contract.Document, operation, assumption!));
    }

    [Fact]
    public async Task Assumptions_OfCountsInEveryForm_AreThoseOfTheContract()
    {
        var contract = await ServedContract.GetAsync();
        var operation = contract.Operation("evaluateCatchTest");
        var told = 0;
        foreach (
            var (count, value, needs) in new[]
            {
                ("turns", """{ "value": 20, "unit": "rev" }""", """{ "meterRevolutionsPerTurn": { "value": 2, "unit": "1" } }"""),
                ("runTime", """{ "value": 60, "unit": "s" }""", """{ "meterSpeed": { "value": 40, "unit": "rpm" } }"""),
                ("indicatedMass", """{ "value": 18, "unit": "kg" }""", """{ "valueTypedIn": { "value": 0.45, "unit": "kg/rev" } }"""),
            }
        )
        {
            var question = operation.RequestExample!.DeepClone();
            LeaveOut(contract.Document, operation.RequestSchema!, question);
            foreach (var (name, need) in JsonNode.Parse(needs)!.AsObject())
                question[name] = need!.DeepClone();
            question["caughtPoints"] = new JsonObject { ["caught"] = 4, ["total"] = 8 };
            foreach (var one in question["catches"]!.AsArray())
            {
                one!.AsObject().Remove("revolutions");
                one[count] = JsonNode.Parse(value);
            }

            using var request = ExampleCalls.With(operation, question);
            using var response = await contract.Client.SendAsync(request);
            var text = await response.Content.ReadAsStringAsync();
            Assert.True(response.IsSuccessStatusCode, text);
            foreach (
                var assumption in JsonNode.Parse(text)!["assumptions"]!
                    .AsArray()
                    .Where(one => Name(one!).EndsWith("Resolution", StringComparison.Ordinal) || Name(one!) == "caughtPoints/spread")
            )
            {
                told++;
                AssertTold(contract.Document, operation, assumption!);
            }
        }

        Assert.Equal(6, told);
    }

    private static void AssertTold(ContractDocument contract, ContractOperation operation, JsonNode assumption)
    {
        var name = Name(assumption);
        var member = Find(contract, operation.RequestSchema!, name.Split('/'));
        Assert.True(member is not null, $"The answer assumes {name}, but {operation} has no such member to override it.");
        var description = member!["description"]!.GetValue<string>();
        if (name == "repeatability" && description.Contains("by the size of the catch", StringComparison.Ordinal))
        {
            Assert.Contains("s^2 = (0.93 %)^2 + (14.3 % rev / turns)^2 + (0.49 % kg / mass)^2", description, StringComparison.Ordinal);
            Assert.InRange(assumption["value"]!["value"]!.GetValue<double>(), 0.93, 1.1);
            return;
        }

        if (assumption["value"] is { } value)
        {
            var used = string.Create(CultureInfo.InvariantCulture, $"{value["value"]!.GetValue<double>():G4} {value["unit"]}");
            Assert.True(
                description.Contains(used, StringComparison.Ordinal),
                $"{name} uses {used} when it is left out; the contract says: {description}"
            );
        }

        // The repeatability of runs has several defaults, and so several origins.
        if (name != "repeatability")
            Assert.True(
                description.Contains(Origin(assumption), StringComparison.Ordinal),
                $"{name} says its default is: {Origin(assumption)}. The contract says: {description} Put [Default] on the property."
            );
    }

    private static string Name(JsonNode assumption) => assumption["name"]!.GetValue<string>();

    // A choice that is no number says why in its own words.
    private static string Origin(JsonNode assumption) => assumption["value"] is null ? "efault" : assumption["origin"]!.GetValue<string>();

    // A member at a path, through objects and the items of lists.
    private static JsonObject? Find(ContractDocument contract, JsonNode schema, ReadOnlySpan<string> path)
    {
        var here = contract.Resolve(schema);
        foreach (var (name, member) in here["properties"]?.AsObject() ?? [])
        {
            var found =
                name != path[0] ? null
                : path.Length == 1 ? member!.AsObject()
                : Find(contract, member!, path[1..]);
            // What is assumed for each meter is a member of a meter.
            found ??= contract.Resolve(member!)["items"] is { } items ? Find(contract, items, path) : null;
            if (found is not null)
                return found;
        }

        return null;
    }

    private static void LeaveOut(ContractDocument contract, JsonNode schema, JsonNode here)
    {
        var shape = contract.Resolve(schema);
        if (here is JsonArray list)
        {
            foreach (var item in list)
                LeaveOut(contract, shape["items"]!, item!);
            return;
        }

        foreach (var (name, member) in shape["properties"]?.AsObject() ?? [])
        {
            if (here is not JsonObject question || question[name] is not { } value)
                continue;
            var told = member!["description"]?.GetValue<string>() ?? "";
            if (
                shape["required"]?.AsArray().Any(one => one!.GetValue<string>() == name) != true
                && System.Text.RegularExpressions.Regex.IsMatch(told, @"Default \d")
            )
            {
                // A value in force is needed; its uncertainty is what has a default.
                if (value is JsonObject quantity && quantity["relativeUncertainty"] is not null)
                    quantity.Remove("relativeUncertainty");
                else if (contract.Resolve(member)["properties"]?["relativeUncertainty"] is null)
                    question.Remove(name);
            }
            else
            {
                LeaveOut(contract, member, value);
            }
        }
    }
}
