using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CalibrationApi.Testing;

namespace CalibrationApi.Contract.Tests;

/// <summary>What the contract says about what is sent is what the service does, at every place of every body.</summary>
/// <remarks>
/// Driven by the served document alone: a new operation is covered by being there. What replaces a record is what creates it.
/// </remarks>
public sealed partial class RequestSchemasTests
{
    private static readonly string[] NoMember = ["member-missing", "unit-missing"];
    private static readonly string[] NoWord = ["word-unknown", "unit-unknown", "unit-ambiguous"];

    // A rule that knows more than the bare range reports with its own code.
    private static readonly string[] OutOfRange = ["number-out-of-range", "revolutions-not-positive", "net-negative"];

    [Fact]
    public Task RequiredMembers_LeftOut_AreMissedByTheService() =>
        ForEachPlaceAsync(
            place =>
                place
                    .Schema["required"]
                    ?.AsArray()
                    .Select(name => new Trial($"{place.Pointer}/{name}", here => here.AsObject().Remove(name!.GetValue<string>())))
                ?? [],
            (problem, place) => IsRefused(problem, HttpStatusCode.UnprocessableEntity) && HasError(problem, NoMember, place)
        );

    [Fact]
    public Task UnknownMembers_OfAnyObject_AreRefused() =>
        ForEachPlaceAsync(
            place => place.Type == "object" ? [new Trial($"{place.Pointer}/noSuchMember", here => here["noSuchMember"] = 1)] : [],
            (problem, place) => IsRefused(problem, HttpStatusCode.BadRequest) && HasError(problem, ["member-unknown"], place)
        );

    [Fact]
    public async Task Schemas_OfWhatIsSent_AreClosedAndAllOthersOpen()
    {
        var contract = (await ServedContract.GetAsync()).Document;
        var sent = References(contract.Operations.Select(operation => operation.RequestSchema), contract);

        var wrong = contract.Json["components"]!["schemas"]!
            .AsObject()
            .Where(schema => schema.Value!["type"]!.GetValue<string>() == "object")
            .Where(schema => (schema.Value!["additionalProperties"]?.ToJsonString() == "false") != sent.Contains(schema.Key))
            .Select(schema => schema.Key);

        Assert.NotEmpty(sent);
        Assert.Empty(wrong);
    }

    [Fact]
    public Task WrongTypes_AtAnyPlace_CannotBeRead() =>
        ForEachPlaceAsync(
            place =>
                [
                    new Trial(place.Pointer, here =>
                        here.ReplaceWith<JsonNode>(place.Type is "object" or "array" ? "text" : new JsonObject())
                    ),
                ],
            // The whole body is told by its own pointer.
            (problem, place) => IsRefused(problem, HttpStatusCode.BadRequest) && HasError(problem, ["type-wrong"], place),
            skip: place => place.Steps.Length == 0
        );

    [Fact]
    public Task Words_OutsideTheirClosedList_AreRefused() =>
        ForEachPlaceAsync(
            place => place.Schema["enum"] is null ? [] : [new Trial(place.Pointer, here => here.ReplaceWith("no-such-word"))],
            (problem, place) =>
                IsRefused(problem, HttpStatusCode.UnprocessableEntity) && HasError(problem, [.. NoWord, "unit-wrong-dimension"], place)
        );

    [Fact]
    public Task Words_OfTheirClosedList_AreKnown() =>
        ForEachPlaceAsync(
            place =>
                (place.Schema["enum"]?.AsArray() ?? []).Select(word => new Trial(place.Pointer, here =>
                    here.ReplaceWith(word!.DeepClone())
                )),
            // A list of units of several dimensions holds those of every form of a controller; which of them fits, the form says.
            (problem, place) => !HasError(problem, Dimensions(place).Count() > 1 ? NoWord : [.. NoWord, "unit-wrong-dimension"], place)
        );

    [Fact]
    public Task Numbers_BeyondTheirBounds_AreRefused() =>
        ForEachPlaceAsync(
            place =>
                new[] { place.Limit("minimum") - 1, place.Limit("exclusiveMinimum"), place.Limit("maximum") + 1 }
                    .OfType<double>()
                    .Select(number => new Trial(place.Pointer, here => here.ReplaceWith(Number(place, number)))),
            (problem, place) => IsRefused(problem, HttpStatusCode.UnprocessableEntity) && HasError(problem, OutOfRange, place)
        );

    [Fact]
    public Task Numbers_AtTheirBounds_AreInRange() =>
        ForEachPlaceAsync(
            place =>
                new[] { place.Limit("minimum"), place.Limit("maximum") }
                    .OfType<double>()
                    .Select(number => new Trial(place.Pointer, here => here.ReplaceWith(Number(place, number)))),
            (problem, place) => !HasError(problem, OutOfRange, place)
        );

    [Fact]
    public Task Quantities_BeyondTheRangeInTheirDescription_AreRefused() =>
        ForEachPlaceAsync(
            place =>
                StatedRange.Of(place) is { } range
                    ? new[] { range.ExcludesLeast ? range.Least : range.Least - 1, range.Most * 1.001 }.Select(number =>
                        range.Trial(place, number)
                    )
                    : [],
            (problem, place) => IsRefused(problem, HttpStatusCode.UnprocessableEntity) && HasError(problem, OutOfRange, place)
        );

    [Fact]
    public Task Quantities_AtTheRangeInTheirDescription_AreInRange() =>
        ForEachPlaceAsync(
            place =>
                StatedRange.Of(place) is { } range
                    ? new[] { range.ExcludesLeast ? range.Most : range.Least, range.Most }.Select(number => range.Trial(place, number))
                    : [],
            // A rule that looks at several members may still refuse it, but not with this range.
            (problem, place) =>
                problem["errors"]
                    ?.AsArray()
                    .Any(error =>
                        place.IsAbout(error!)
                        && error!["detail"]!.GetValue<string>().Contains(StatedRange.Of(place)!.Text, StringComparison.Ordinal)
                    ) != true
        );

    [Fact]
    public Task Texts_LongerThanTheirLimit_AreRefused() =>
        ForEachPlaceAsync(
            place =>
                place.Limit("maxLength") is { } most
                    ? [new Trial(place.Pointer, here => here.ReplaceWith(new string('x', (int)most + 1)))]
                    : [],
            (problem, place) => IsRefused(problem, HttpStatusCode.UnprocessableEntity) && HasError(problem, ["text-too-long"], place)
        );

    [Fact]
    public Task Texts_AsLongAsTheirLimitInCodePoints_AreTaken() =>
        ForEachPlaceAsync(
            // A seedling is one character for JSON Schema and two for C#.
            place =>
                place.Limit("maxLength") is { } most
                    ? [new Trial(place.Pointer, here => here.ReplaceWith(string.Concat(Enumerable.Repeat("🌱", (int)most))))]
                    : [],
            (problem, place) => !HasError(problem, ["text-too-long"], place)
        );

    [Fact]
    public Task Texts_ThatAreBlank_AreRefusedWhereAPatternSaysSo() =>
        ForEachPlaceAsync(
            place => place.Schema["pattern"] is null ? [] : [new Trial(place.Pointer, here => here.ReplaceWith("  "))],
            (problem, place) => IsRefused(problem, HttpStatusCode.UnprocessableEntity) && HasError(problem, ["text-wrong"], place)
        );

    [Fact]
    public Task Lists_LongerThanTheirLimit_AreRefused() =>
        ForEachPlaceAsync(
            place => place.Limit("maxItems") is { } most ? [new Trial(place.Pointer, here => Fill(here.AsArray(), (int)most + 1))] : [],
            (problem, place) => IsRefused(problem, HttpStatusCode.UnprocessableEntity) && HasError(problem, ["too-many"], place)
        );

    [Fact]
    public Task Lists_ShorterThanTheirLimit_AreRefused() =>
        ForEachPlaceAsync(
            place =>
                place.Limit("minItems") is > 0
                    ? [new Trial(place.Pointer, here => Fill(here.AsArray(), (int)place.Limit("minItems")! - 1))]
                    : [],
            (problem, place) => IsRefused(problem, HttpStatusCode.UnprocessableEntity) && HasError(problem, ["too-few"], place)
        );

    private static async Task ForEachPlaceAsync(
        Func<FullRequest.Place, IEnumerable<Trial>> trials,
        Func<JsonNode, FullRequest.Place, bool> holds,
        Func<FullRequest.Place, bool>? skip = null
    )
    {
        var contract = await ServedContract.GetAsync();
        var (tried, wrong) = (0, new List<string>());
        foreach (
            var operation in contract.Document.Operations.Where(operation =>
                operation is { Method: "POST", IsPlainPath: true, RequestSchema: not null }
            )
        )
        {
            var full = new FullRequest(contract.Document, operation);
            foreach (var place in full.Places.Where(place => skip?.Invoke(place) != true))
            {
                foreach (var trial in trials(place))
                {
                    tried++;
                    var about = place with { Pointer = trial.Pointer };
                    var problem = await AskAsync(contract.Client, full.With(place, trial.Change));
                    // Where members exclude each other, that is said first; then the place is tried alone.
                    if (!holds(problem, about) && HasError(problem, ["settings-at-odds"], about))
                        problem = await AskAsync(contract.Client, full.Alone(place, trial.Change));
                    if (!holds(problem, about))
                        wrong.Add($"{operation.OperationId} {trial.Pointer}: {Shown(problem)}");
                }
            }
        }

        Assert.True(tried > 0, "No place of any request was tried.");
        Assert.Empty(wrong);
    }

    private static IEnumerable<string> Dimensions(FullRequest.Place place) =>
        ContractDocument.Committed.Operations.Single(operation => operation.OperationId == "listUnits").AnswerExample!["units"]!
            .AsArray()
            .Where(unit => place.Schema["enum"]!.AsArray().Any(word => word!.GetValue<string>() == unit!["symbol"]!.GetValue<string>()))
            .Select(unit => unit!["dimension"]!.GetValue<string>())
            .Distinct();

    private static async Task<JsonNode> AskAsync(HttpClient client, HttpRequestMessage request)
    {
        using (request)
        using (var response = await client.SendAsync(request))
            return JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
    }

    private static bool IsRefused(JsonNode problem, HttpStatusCode status) => problem["status"]?.GetValue<int>() == (int)status;

    private static bool HasError(JsonNode problem, IReadOnlyCollection<string> codes, FullRequest.Place place) =>
        problem["errors"]?.AsArray().Any(error => place.IsAbout(error!) && codes.Contains(error!["code"]!.GetValue<string>())) == true;

    private static string Shown(JsonNode problem) =>
        problem["errors"] is { } errors
            ? $"{problem["status"]} {string.Join(", ", errors.AsArray().Select(error => $"{error!["pointer"]} {error["code"]}"))}"
            : "answered";

    private static JsonNode Number(FullRequest.Place place, double number) =>
        place.Type == "integer" ? JsonValue.Create((long)number) : JsonNode.Parse(number.ToString("R", CultureInfo.InvariantCulture))!;

    private static void Fill(JsonArray list, int count)
    {
        var item = list[0]!.DeepClone();
        list.Clear();
        for (var i = 0; i < count; i++)
            list.Add(item.DeepClone());
    }

    private static HashSet<string> References(IEnumerable<JsonNode?> roots, ContractDocument contract)
    {
        var found = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<JsonNode>(roots.OfType<JsonNode>());
        while (open.TryPop(out var node))
        {
            if (node is JsonObject here && here["$ref"] is JsonValue reference && found.Add(reference.GetValue<string>().Split('/')[^1]))
                open.Push(contract.Resolve(node));
            foreach (
                var child in node is JsonObject members ? members.Select(member => member.Value)
                : node is JsonArray items ? items
                : []
            )
            {
                if (child is not null)
                    open.Push(child);
            }
        }

        return found;
    }

    /// <summary>The range of a quantity. It holds in any unit, so the contract can state it only in words.</summary>
    private sealed partial record StatedRange(string Text, double Least, bool ExcludesLeast, double Most, string Unit, bool OfItems)
    {
        public static StatedRange? Of(FullRequest.Place place)
        {
            var range = Words().Match(place.Description);
            return range.Success
                ? new StatedRange(
                    range.Groups["text"].Value,
                    Number("least"),
                    range.Groups["above"].Success,
                    Number("most"),
                    range.Groups["unit"] is { Success: true } unit ? unit.Value : "1",
                    place.Type == "array"
                )
                : null;

            double Number(string name) => double.Parse(range.Groups[name].ValueSpan, CultureInfo.InvariantCulture);
        }

        public Trial Trial(FullRequest.Place place, double number)
        {
            JsonNode Quantity() => new JsonObject { ["value"] = number, ["unit"] = Unit };
            return OfItems
                ? new Trial($"{place.Pointer}/0", here => here[0]!.ReplaceWith(Quantity()))
                : new Trial(place.Pointer, here => (here["value"], here["unit"]) = (number, Unit));
        }

        [GeneratedRegex(@"Range: (?<text>(?<above>above )?(?<least>-?[\d.]+) (?:and up )?to (?<most>[\d.]+)(?: (?<unit>\S+))?)\.$")]
        private static partial Regex Words();
    }

    /// <summary>One change of a request, and the place it is about.</summary>
    private sealed record Trial(string Pointer, Action<JsonNode> Change);
}
