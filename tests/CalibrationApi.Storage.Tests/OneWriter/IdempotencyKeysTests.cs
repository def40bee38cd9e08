using CalibrationApi.Storage.OneWriter;
using Microsoft.Data.Sqlite;

namespace CalibrationApi.Storage.Tests.OneWriter;

public sealed class IdempotencyKeysTests : IDisposable
{
    private const string Local = TestDatabase.Local;
    private const string Route = "POST /v1/things";
    private readonly TestDatabase database = TestDatabase.Empty();
    private readonly SqliteConnection connection;

    public IdempotencyKeysTests() => connection = database.Open();

    [Fact]
    public void Find_WhatWasRemembered_GivesItByteForByte()
    {
        var answer = new StoredAnswer(201, "/v1/things/1", "\"r1\"", [0, 255, 10, 13]);
        Remember("k1", Given.Noon, answer);

        var (fingerprint, found) = Find("k1", Given.Noon)!.Value;

        Assert.Equal("f1", fingerprint);
        Assert.Equal(answer with { Body = found.Body }, found);
        Assert.Equal(answer.Body, found.Body);
    }

    [Fact]
    public void Find_AnswerWithoutLocationAndTag_GivesNone()
    {
        Remember("k1", Given.Noon, new StoredAnswer(200, null, null, []));

        var found = Find("k1", Given.Noon)!.Value.Answer;

        Assert.Equal((200, null, null, 0), (found.Status, found.Location, found.ETag, found.Body.Length));
    }

    [Theory]
    [InlineData(Route, "other")]
    [InlineData("POST /v1/others", "k1")]
    [InlineData(Route, "K1")]
    public void Find_OtherRouteOrKey_IsNothing(string route, string key)
    {
        Remember("k1", Given.Noon, Given.Answer);

        Assert.Null(IdempotencyKeys.Find(connection, Local, route, key, Given.Noon));
    }

    [Fact]
    public void Find_UntilTheEndOfItsLifetime_FindsIt()
    {
        Remember("k1", Given.Noon, Given.Answer);

        Assert.Equal(TimeSpan.FromHours(24), IdempotencyKeys.Lifetime);
        Assert.NotNull(Find("k1", Given.Noon.AddHours(24)));
        Assert.Null(Find("k1", Given.Noon.AddHours(24).AddMilliseconds(1)));
    }

    [Fact]
    public void Remember_KeyThatIsTooOld_TakesItAgain()
    {
        Remember("k1", Given.Noon, Given.Answer);
        var later = Given.Noon.AddHours(25);

        Remember("k1", later, Given.Answer with { Status = 200 });

        Assert.Equal(200, Find("k1", later)!.Value.Answer.Status);
    }

    [Fact]
    public void Remember_ForgetsWhatIsTooOldAndNothingElse()
    {
        Remember("old", Given.Noon, Given.Answer);
        Remember("young", Given.Noon.AddHours(1), Given.Answer);

        Remember("new", Given.Noon.AddHours(24.5), Given.Answer);

        Assert.Equal(2, database.Count("idempotency_keys"));
        Assert.NotNull(Find("young", Given.Noon.AddHours(24.5)));
    }

    [Fact]
    public void Remember_KeyThatIsStillKnown_Throws()
    {
        Remember("k1", Given.Noon, Given.Answer);

        Assert.Throws<SqliteException>(() => Remember("k1", Given.Noon.AddHours(1), Given.Answer));
    }

    public void Dispose()
    {
        connection.Dispose();
        database.Dispose();
    }

    private void Remember(string key, DateTimeOffset now, StoredAnswer answer) =>
        IdempotencyKeys.Remember(connection, Local, Route, key, "f1", answer, now);

    private (string Fingerprint, StoredAnswer Answer)? Find(string key, DateTimeOffset now) =>
        IdempotencyKeys.Find(connection, Local, Route, key, now);
}
