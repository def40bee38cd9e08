using CalibrationApi.Storage.OneWriter;
using Dapper;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Tests.Plumbing.Keeping;

/// <summary>Whose fault it is when a write fails: that of the database, which passes, or ours.</summary>
public sealed class StorageFailureTests : IDisposable
{
    private const string Products = "/v1/products";

    private readonly RecordService service = new();

    public void Dispose() => service.Dispose();

    [Fact]
    public async Task Write_ThatBreaksAConstraint_IsOurFailure()
    {
        service.Execute("create trigger broken before insert on products begin select raise(abort, 'A rule of the file is broken.'); end");

        var failed = await service.WithoutTraceAsync(() => service.PostAsync(Products, Farm.ProductDraft));

        await failed.RefusedAsync(500, null, "internal-error");
        Assert.Null(failed.Header("Retry-After"));
    }

    [Fact]
    public async Task Write_WithAWrongStatement_IsOurFailure()
    {
        service.Execute("alter table products rename to elsewhere");

        await (await service.PostAsync(Products, Farm.ProductDraft)).RefusedAsync(500, null, "internal-error");
    }

    [Fact]
    public async Task Write_IntoAFullFile_CanBeRepeatedOnceThereIsRoom()
    {
        var writer = service.Service<SingleWriter>();
        await writer.WriteAsync(connection =>
            connection.Execute($"pragma max_page_count = {connection.QuerySingle<long>("pragma page_count")}")
        );
        Reply last;
        do last = await service.PostAsync(Products, Farm.ProductDraft);
        while (last.Status == 201);

        await last.RefusedAsync(503, null, "storage-unavailable");
        Assert.Equal("5", last.Header("Retry-After"));
        await writer.WriteAsync(connection => connection.Execute("pragma max_page_count = 1000000"));
        (await service.PostAsync(Products, Farm.ProductDraft)).Expect(201);
    }

    [Theory]
    [InlineData(5)]
    [InlineData(8)]
    [InlineData(10)]
    [InlineData(11)]
    [InlineData(14)]
    [InlineData(26)]
    public async Task Write_OnADatabaseThatCannotBeUsed_CanBeRepeated(int code)
    {
        await using var host = new ArrangedHost();
        host.Endpoints["/fails"] = new Microsoft.AspNetCore.Http.Endpoint(
            _ => throw new SqliteException("It cannot be used.", code),
            null,
            "fails"
        );

        using var response = await host.GetAsync("/fails");

        Assert.Equal("storage-unavailable", (await ProblemBody.ReadAsync(response, 503)).Only().Code);
        Assert.Equal("5", Assert.Single(response.Headers.GetValues("Retry-After")));
    }
}
