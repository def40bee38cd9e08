using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Testing;
using CalibrationApi.Tests.Plumbing.Batch;
using FluentValidation;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Json;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;

namespace CalibrationApi.Tests.Plumbing.Http;

/// <summary>
/// No request inside the limits costs much: every list of the contract, filled with what it should not hold, and whatever else is long.
/// </summary>
/// <remarks>
/// What a thread allocates is counted, which is the same however busy the machine is. The time is measured by the benchmark "limits".
/// </remarks>
public sealed class LongListTests
{
    private const int MostBytes = 1024 * 1024;
    private const int LineBytes = 64 * 1024;
    private const long MostAllocated = 50 * 1024 * 1024;
    private const int LongestAnswer = 64 * 1024;

    private static readonly IReadOnlyList<SentList> Lists = SentList.Of(ApiHost.Contract);
    private static readonly Dictionary<string, Func<byte[], ProblemResult?>> Readers = ApiHost
        .SharedServices.GetRequiredService<EndpointDataSource>()
        .Endpoints.Where(endpoint => endpoint.Metadata.GetMetadata<IAcceptsMetadata>()?.RequestType is not null)
        .ToDictionary(
            endpoint => endpoint.Metadata.GetRequiredMetadata<IEndpointNameMetadata>().EndpointName,
            endpoint => ReaderOf(endpoint.Metadata.GetRequiredMetadata<IAcceptsMetadata>().RequestType!)
        );

    public static TheoryData<string> Operations =>
        [.. ApiHost.Contract.Operations.Where(operation => operation.RequestSchema is not null).Select(operation => operation.OperationId)];

    [Fact]
    public void List_OfEveryBody_HasAGreatestLengthInTheContract()
    {
        Assert.True(Lists.Count > 40);
        Assert.All(Lists, list => Assert.InRange(list.MostItems, 1, 1000));
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("null")]
    public void List_OneItemTooLong_IsToldWithItsPlaceAndLimit(string item)
    {
        Assert.All(Lists.Where(list => list.TakesObjects || item == "null"), list =>
        {
            foreach (var count in (int[])[list.MostItems + 1, 20_000])
            {
                var problem = Readers[list.Operation.OperationId](list.Body(item, count))!;

                Assert.Equal(StatusCodes.Status422UnprocessableEntity, problem.StatusCode);
                var fault = Assert.Single(problem.Errors, error => error.Code == ErrorCodes.TooMany);
                Assert.Equal(("#" + list.Pointer, ItemsAttribute.TooManyItems(list.MostItems)), (fault.Pointer, fault.Detail));
            }
        });
    }

    [Fact]
    public void List_AsLongAsItMayBe_IsNotTooLong()
    {
        Assert.All(Lists, list =>
            Assert.DoesNotContain(Readers[list.Operation.OperationId](list.Body("null", list.MostItems))!.Errors, error =>
                error.Code == ErrorCodes.TooMany
            )
        );
    }

    [Theory]
    [MemberData(nameof(Operations))]
    public void Body_FullOfAnything_CostsLittleAndIsToldBriefly(string operation)
    {
        var sent = ApiHost.Contract.Operations.Single(one => one.OperationId == operation);
        foreach (var bytes in (int[])[MostBytes, LineBytes])
        {
            foreach (var (what, body) in new FullBodies(ApiHost.Contract, bytes).For(sent))
            {
                var before = GC.GetAllocatedBytesForCurrentThread();
                var problem = Readers[operation](body);
                var answer = problem is null
                    ? []
                    : JsonSerializer.SerializeToUtf8Bytes(problem.ToProblem("trace"), ProblemJson.Default.Problem);
                var allocated = GC.GetAllocatedBytesForCurrentThread() - before;

                Assert.True(allocated <= MostAllocated, $"{operation}, {what}, {bytes} bytes: {allocated >> 20} MiB allocated.");
                Assert.True(answer.Length <= LongestAnswer, $"{operation}, {what}, {bytes} bytes: an answer of {answer.Length} bytes.");
                Assert.True(
                    problem is null || problem.Errors.Count <= ProblemResult.MostErrors,
                    $"{operation}, {what}, {bytes} bytes: {problem?.Errors.Count} errors."
                );
            }
        }
    }

    [Fact]
    public async Task Post_AMebibyteOfEmptyItems_IsOneFault()
    {
        var list = Lists.Single(one => one.ToString() == "planCatch /meters");

        using var response = await Question.AskAsync(
            ApiHost.Client,
            Question.CatchPlan,
            Encoding.UTF8.GetString(list.Filled("{}", MostBytes))
        );

        var fault = (await ProblemBody.ReadAsync(response, 422)).Only();
        Assert.Equal(
            ("#/meters", "too-many", "No more than 64 items are taken here. Split the request."),
            (fault.Pointer, fault.Code, fault.Detail)
        );
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("null")]
    [InlineData("1")]
    public async Task Batch_OfLinesWithLongLists_TellsEachLineBriefly(string item)
    {
        foreach (var operation in Question.Operations)
        {
            var lists = Lists.Where(list => list.Operation.Path == Question.PathOf(operation)).ToArray();
            if (lists.Length == 0)
                continue;
            byte[] body = [.. lists.SelectMany(list => (byte[])[.. list.Filled(item, LineBytes), (byte)'\n'])];

            using var response = await Batches.SendAsync(ApiHost.Client, operation, body);

            var lines = await Batches.LinesAsync(response);
            Assert.Equal(lists.Length, lines.Length);
            Assert.All(lines, line =>
            {
                Assert.True(line.Length <= LongestAnswer, $"{line.Length} characters.");
                Assert.InRange(
                    JsonDocument.Parse(line).RootElement.GetProperty("problem").GetProperty("errors").GetArrayLength(),
                    1,
                    ProblemResult.MostErrors
                );
            });
        }
    }

    [Fact]
    public async Task Table_OfRowsThatAreAllWrong_IsToldBriefly()
    {
        var rows = string.Concat(
            Enumerable.Range(0, 2000).Select(i => string.Create(CultureInfo.InvariantCulture, $"{i / 200},x,x,x\r\n"))
        );

        using var response = await Batches.SendAsync(
            ApiHost.Client,
            Question.CatchTest,
            Encoding.UTF8.GetBytes("test,scale.division [kg],net [kg],revolutions [rev]\r\n" + rows),
            mediaType: Batches.Csv
        );

        var lines = await Batches.LinesAsync(response);
        Assert.Equal(10, lines.Length);
        Assert.All(lines, line => Assert.InRange(line.Length, 1, LongestAnswer));
    }

    [Fact]
    public async Task Table_WithAHundredUnknownColumns_ListsTheKnownOnesOnce()
    {
        var header = string.Join(',', Enumerable.Range(100, 160).Select(i => string.Create(CultureInfo.InvariantCulture, $"c{i}")));

        using var response = await Batches.SendAsync(
            ApiHost.Client,
            Question.CatchTest,
            Encoding.UTF8.GetBytes(header + "\r\n"),
            mediaType: Batches.Csv
        );

        var problem = await ProblemBody.ReadAsync(response, 422);
        Assert.InRange(problem.Text.Length, 1, 32 * 1024);
        Assert.Single(problem.Text.Split("excluded.reason")[1..]);
        Assert.Equal("The request was read, but at least 100 things in it have to be put right.", problem.Detail);
    }

    private static Func<byte[], ProblemResult?> ReaderOf(Type request) =>
        (Func<byte[], ProblemResult?>)
            typeof(LongListTests)
                .GetMethod(nameof(Reader), System.Reflection.BindingFlags.NonPublic | System.Reflection.BindingFlags.Static)!
                .MakeGenericMethod(request)
                .Invoke(null, null)!;

    private static Func<byte[], ProblemResult?> Reader<T>()
        where T : class
    {
        var type =
            (JsonTypeInfo<T>)
                ApiHost.SharedServices.GetRequiredService<IOptions<JsonOptions>>().Value.SerializerOptions.GetTypeInfo(typeof(T));
        var validator = ApiHost.SharedServices.GetRequiredService<IValidator<T>>();
        return body =>
        {
            ReadOnlySpan<byte> text = body;
            var (value, problem) = JsonBody.Parse(ref text, type);
            return problem ?? RequestFilter.Broken(validator, value!);
        };
    }
}
