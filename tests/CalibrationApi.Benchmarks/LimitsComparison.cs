using System.Net.Http.Headers;
using System.Text.Json.Nodes;
using CalibrationApi.Storage;
using CalibrationApi.Testing;
using Dapper;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Benchmarks;

/// <summary>
/// What the dearest request inside the limits costs: every list filled with what it should not hold, and whatever else is long, one request
/// after the other.
/// </summary>
/// <remarks>Time and memory are those of the whole process, so the client is in them.</remarks>
internal sealed class LimitsComparison : IComparison
{
    private const int BodyBytes = 1024 * 1024;
    private const int LineBytes = 64 * 1024;
    private const double MostSeconds = 0.2;
    private const double MostMebibytes = 50;

    // The first run of a case compiles what it needs.
    private const int Repetitions = 5;

    public string Name => "limits";

    public async Task<IReadOnlyList<MeasuredRatio>> RunAsync()
    {
        await using var host = new BenchmarkHost();
        using var client = new HttpClient { BaseAddress = host.Address };
        var contract = ContractDocument.Parse(await client.GetStringAsync(new Uri("/openapi/v1.json", UriKind.Relative)));
        var costs = new List<Cost>();
        foreach (var operation in contract.Operations.Where(operation => operation.RequestSchema is not null))
        {
            foreach (var (what, body) in new FullBodies(contract, BodyBytes).For(operation))
                costs.Add(await CostAsync(client, operation, operation.Path, what, "application/json", body));
            if (!contract.Operations.Any(one => one.Path == operation.Path + "/batch"))
                continue;
            foreach (var (what, line) in new FullBodies(contract, LineBytes - 2).For(operation))
                costs.Add(await CostAsync(client, operation, operation.Path + "/batch", $"a line, {what}", "application/x-ndjson", line));
        }

        var names = string.Join('&', Enumerable.Range(0, 1500).Select(i => FormattableString.Invariant($"x{i}")));
        foreach (var operation in contract.Operations.Where(operation => operation.Method == "GET"))
            costs.Add(await CostAsync(client, operation, $"{operation.Path}?{names}", "many parameters", "application/json", []));

        costs.AddRange(await OfTheLargestMachineAsync(host, client, contract));

        var slowest = costs.MaxBy(cost => cost.Seconds)!;
        var largest = costs.MaxBy(cost => cost.Mebibytes)!;
        foreach (
            var cost in costs
                .OrderByDescending(cost => cost.Seconds)
                .Take(10)
                .Concat(costs.OrderByDescending(cost => cost.Mebibytes).Take(10))
                .Concat(costs.Where(cost => cost.Status == 200).OrderByDescending(cost => cost.Seconds).Take(10))
        )
            Console.WriteLine($"  {cost}");
        return
        [
            new MeasuredRatio(
                $"CPU time of the dearest of {costs.Count} requests inside the limits / 0.2 s",
                slowest.Seconds / MostSeconds,
                Aim.AtMost(1),
                slowest.ToString()
            ),
            new MeasuredRatio(
                $"memory allocated for the dearest of {costs.Count} requests inside the limits / 50 MiB",
                largest.Mebibytes / MostMebibytes,
                Aim.AtMost(1),
                largest.ToString()
            ),
        ];
    }

    // What is computed from stored records: all elements predicted by their volume, then all with a value in force that rests on a test.
    private static async Task<IReadOnlyList<Cost>> OfTheLargestMachineAsync(
        BenchmarkHost host,
        HttpClient client,
        ContractDocument contract
    )
    {
        var test = await StoredSeason.CatchTestAsync(client);
        var (product, scale) = (test["product"]!.GetValue<string>(), test["scale"]!.GetValue<string>());
        var lot = await CreatedAsync(
            "/v1/lots",
            new JsonObject
            {
                ["name"] = "lot A",
                ["product"] = product,
                ["bulkDensity"] = new JsonObject { ["value"] = 62, ["unit"] = "kg/hL" },
            }
        );
        var machine = await CreatedAsync("/v1/machines", LargestMachine.Machine());
        var plan = await CreatedAsync("/v1/plans", LargestMachine.Plan(machine, product, lot, scale));
        (string Operation, string Id)[] asked = [("setUpOfPlan", plan), ("planCatchOfPlan", plan), ("listValuesInForce", machine)];
        var costs = new List<Cost>();
        await AskAllAsync("of the largest machine, nothing adopted");
        var stored = await CreatedAsync("/v1/catch-tests", test);
        await CreatedAsync(
            "/v1/adoptions",
            new JsonObject
            {
                ["machine"] = test["machine"]!.DeepClone(),
                ["meter"] = test["meter"]!.DeepClone(),
                ["element"] = test["element"]!.DeepClone(),
                ["product"] = product,
                ["test"] = stored,
                ["typedIn"] = new JsonObject { ["value"] = 0.363, ["unit"] = "kg/rev" },
                ["reason"] = "by the test",
                ["occurredAt"] = "2026-04-18T08:00:00+02:00",
                ["recordedBy"] = "A. Operator",
            }
        );
        using (var connection = host.Services.GetRequiredService<CalibrationDatabase>().Open())
        {
            foreach (var statement in LargestMachine.ValueForEachElement)
                connection.Execute(statement, new { machine });
        }

        await AskAllAsync("of the largest machine, everything adopted");
        return costs;

        async Task<string> CreatedAsync(string path, JsonNode body) =>
            (await StoredSeason.PostAsync(client, path, body))["id"]!.GetValue<string>();

        async Task AskAllAsync(string what)
        {
            foreach (var (name, id) in asked)
            {
                var operation = contract.Operations.Single(one => one.OperationId == name);
                costs.Add(
                    await CostAsync(
                        client,
                        operation,
                        operation.Path.Replace("{id}", id, StringComparison.Ordinal),
                        what,
                        "application/json",
                        []
                    )
                );
            }
        }
    }

    private static async Task<Cost> CostAsync(
        HttpClient client,
        ContractOperation operation,
        string path,
        string what,
        string media,
        byte[] body
    )
    {
        var (seconds, mebibytes, status) = (double.MaxValue, double.MaxValue, 0);
        for (var i = 0; i < Repetitions; i++)
        {
            // A record with this id does not exist; the body is read all the same.
            using var request = new HttpRequestMessage(
                HttpMethod.Parse(operation.Method),
                new Uri(path.Replace("{id}", "019dffff-ffff-7fff-bfff-ffffffffffff", StringComparison.Ordinal), UriKind.Relative)
            )
            {
                Content = new ByteArrayContent(body),
            };
            request.Content.Headers.ContentType = new MediaTypeHeaderValue(media);
            var (allocated, time) = (GC.GetTotalAllocatedBytes(precise: true), Environment.CpuUsage.TotalTime);
            using var response = await client.SendAsync(request);
            _ = await response.Content.ReadAsByteArrayAsync();
            seconds = Math.Min(seconds, (Environment.CpuUsage.TotalTime - time).TotalSeconds);
            mebibytes = Math.Min(mebibytes, (GC.GetTotalAllocatedBytes(precise: true) - allocated) / (1024.0 * 1024.0));
            status = (int)response.StatusCode;
        }

        return new Cost($"{operation.Method} {path.Split('?')[0]}, {what}", status, seconds, mebibytes);
    }

    private sealed record Cost(string Request, int Status, double Seconds, double Mebibytes)
    {
        public override string ToString() => FormattableString.Invariant($"{Seconds:0.000} s, {Mebibytes:0.0} MiB, {Status}: {Request}");
    }
}
