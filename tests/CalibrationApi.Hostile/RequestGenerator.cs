using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Testing;

namespace CalibrationApi.Hostile;

/// <summary>Makes the requests of a run from the contract: each operation in turn, valid, nearly valid and broken.</summary>
/// <param name="contract">What it walks.</param>
/// <param name="world">What it makes requests of.</param>
/// <param name="address">Where the service listens.</param>
/// <param name="seed">Of the run; the same seed and number make the same request.</param>
public sealed class RequestGenerator(ContractDocument contract, World world, Uri address, int seed)
{
    private const int Prime = 1_000_003;

    private readonly Payloads payloads = new(contract, world);

    /// <summary>A request by its number.</summary>
    public HostileRequest Make(int number)
    {
        var random = new Random(unchecked((seed * Prime) + number));
        var operation = contract.Operations[number % contract.Operations.Count];
        var draft = Valid(operation, number, random);
        foreach (var trick in Enumerable.Range(0, HowMany(random)).Select(_ => random.Next(100)))
        {
            switch (trick)
            {
                case < 40 when draft.Tree is not null:
                    draft.Tricks.Add(payloads.Change(draft.Tree, random));
                    draft.Body = Encode(operation, Payloads.Text(draft.Tree, random));
                    break;
                case < 40 when Parameters(operation, "query") is { Length: > 0 } parameters:
                    var name = parameters[random.Next(parameters.Length)].Name;
                    draft.Query.Add($"{name}={AddressTricks.QueryValue(world, name, payloads, random)}");
                    draft.Tricks.Add($"query {name}");
                    break;
                case < 52 when draft.Body.Length > 0:
                    draft.Tree = null;
                    Try(BodyTricks.All, draft, random);
                    break;
                case < 60 when draft.Path.Contains("019d", StringComparison.Ordinal):
                    draft.Path = operation.Path.Replace("{id}", payloads.AnyId(random), StringComparison.Ordinal);
                    draft.Tricks.Add("other id in the path");
                    break;
                case < 76:
                    Try(AddressTricks.All, draft, random);
                    break;
                case < 97:
                    Try(HeaderTricks.All, draft, random);
                    break;
                default:
                    draft.BreaksHttp = true;
                    Try(BodyTricks.AgainstHttp, draft, random);
                    break;
            }
        }

        return draft.Done();
    }

    private static int HowMany(Random random) =>
        random.Next(20) switch
        {
            < 4 => 0,
            < 14 => 1,
            < 18 => 2,
            _ => 3,
        };

    private void Try((string Name, Action<RequestDraft, World, Random> Do)[] tricks, RequestDraft draft, Random random)
    {
        var (name, act) = tricks[random.Next(tricks.Length)];
        act(draft, world, random);
        draft.Tricks.Add(name);
    }

    private RequestDraft Valid(ContractOperation operation, int number, Random random)
    {
        var collection = operation.Path.Split("/{id}")[0];
        var draft = new RequestDraft
        {
            Number = number,
            Operation = operation.OperationId,
            Method = operation.Method,
            Path = world.Ids.TryGetValue(collection, out var ids)
                ? operation.Path.Replace("{id}", ids[random.Next(ids.Length)], StringComparison.Ordinal)
                : operation.Path,
        };
        draft.Add("Host", address.Authority);
        draft.Add("Authorization", $"Bearer {world.Key}");
        foreach (var (name, schema) in Parameters(operation, "query").Where(_ => random.Next(12) == 0))
            draft.Query.Add(
                $"{name}={(schema["enum"] is JsonArray words ? words[random.Next(words.Count)]!.GetValue<string>() : AddressTricks.QueryValue(world, name, payloads, random))}"
            );
        if (operation.Takes("If-Match") && random.Next(10) != 0)
            draft.Add("If-Match", "*");
        if (operation.Takes("Idempotency-Key") && random.Next(4) == 0)
            draft.Add("Idempotency-Key", $"\"{Payloads.FreshId(random)}\"");
        if (Body(operation, random) is { } body)
        {
            draft.Tree = body;
            draft.Body = Encode(operation, Payloads.Text(body, random));
            draft.Add("Content-Type", operation.RequestLineExample is null ? "application/json" : "application/x-ndjson");
        }

        return draft;
    }

    private JsonNode? Body(ContractOperation operation, Random random)
    {
        var example = operation.RequestLineExample ?? operation.RequestExample;
        if (example is null)
            return null;
        // The example fits what is stored; what is made of the schema alone goes where no example went.
        var body = operation.RequestSchema is { } schema && random.Next(3) == 0 ? payloads.Fitting(schema, random) : example.DeepClone();
        if (body is JsonObject members && members.ContainsKey("id"))
        {
            if (operation.Method == "POST" && random.Next(8) != 0)
                members["id"] = Payloads.FreshId(random);
            else if (random.Next(8) != 0)
                members.Remove("id");
        }

        return body;
    }

    private static byte[] Encode(ContractOperation operation, string text) =>
        Encoding.UTF8.GetBytes(operation.RequestLineExample is null ? text : text + "\n");

    private (string Name, JsonObject Schema)[] Parameters(ContractOperation operation, string place) =>
        [
            .. (operation.Json["parameters"]?.AsArray() ?? [])
                .Select(parameter => contract.Resolve(parameter!))
                .Where(parameter => parameter["in"]!.GetValue<string>() == place)
                .Select(parameter => (parameter["name"]!.GetValue<string>(), contract.Resolve(parameter["schema"]!))),
        ];
}
