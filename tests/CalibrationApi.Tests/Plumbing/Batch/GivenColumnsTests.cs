using System.Text;

namespace CalibrationApi.Tests.Plumbing.Batch;

/// <summary>What of a table is its sender's own, and comes back with the answers.</summary>
public sealed class GivenColumnsTests
{
    [Fact]
    public async Task Answers_AsATable_GiveBackWhatIsTheSendersOwn()
    {
        using var response = await SendAsync(
            """
            test,x-field,note,meter,scale.division [kg],net [kg],revolutions [rev],x-=sum
            A,north,first,rear,0.02,14.5,40,
            A,north,second,,,14.6,40,'=1
            B,,,,0.02,,,
            """,
            Batches.Csv
        );

        var text = await response.Content.ReadAsStringAsync();
        var rows = Rfc4180.Read(text);
        Assert.StartsWith("line,test,x-field,note,meter,x-=sum,status,errors,detail,", text, StringComparison.Ordinal);
        Assert.Equal(
            ["north", "first; second", "rear", "'=1"],
            ((string[])["x-field", "note", "meter", "x-=sum"]).Select(name => rows[0][name])
        );
        Assert.Equal("", rows[1]["x-field"]);
    }

    [Fact]
    public async Task Answers_ToATableWithAMark_BeginWithOne()
    {
        using var response = await SendAsync("\uFEFFtest,scale.division [kg],net [kg],revolutions [rev]\nA,0.02,14.5,40\n", Batches.Csv);

        Assert.Equal([0xEF, 0xBB, 0xBF], (await response.Content.ReadAsByteArrayAsync())[..3]);
    }

    private static Task<HttpResponseMessage> SendAsync(string table, string accept) =>
        Batches.SendAsync(ApiHost.Client, Question.CatchTest, Encoding.UTF8.GetBytes(table), mediaType: Batches.Csv, accept: accept);
}
