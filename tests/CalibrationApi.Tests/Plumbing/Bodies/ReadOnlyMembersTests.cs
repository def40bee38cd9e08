using System.Text;
using System.Text.Json.Nodes;
using CalibrationApi.Plumbing.Bodies;

namespace CalibrationApi.Tests.Plumbing.Bodies;

/// <summary>Members that only the service sets, taken out of a body that has them.</summary>
public sealed class ReadOnlyMembersTests
{
    [Theory]
    [InlineData("""{"revision":1,"a":2}""", """{"a":2}""", 1)]
    [InlineData("""{"a":2,"revision":1}""", """{"a":2}""", 1)]
    [InlineData("""{"a":2 , "revision" : {"x":[1]} , "b":3}""", """{"a":2,"b":3}""", 1)]
    [InlineData("""{"a":2,"revision":1,"createdAt":"x"}""", """{"a":2}""", 2)]
    [InlineData("""{"revision":1,"createdAt":"x"}""", "{}", 2)]
    [InlineData("""{"revision":1,"b":{"revision":2},"createdAt":"x"}""", """{"b":{"revision":2}}""", 2)]
    [InlineData("""{"a":2}""", """{"a":2}""", 0)]
    public void TakeFrom_Body_LeavesTheOthersReadable(string sent, string left, int count)
    {
        var body = Encoding.UTF8.GetBytes(sent);

        var taken = ReadOnlyMembersAttribute.TakeFrom(typeof(Some), body);

        Assert.Equal(count, taken.Count);
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(left), JsonNode.Parse(body)), Encoding.UTF8.GetString(body));
    }

    [Theory]
    [InlineData("""{"revision":1""")]
    [InlineData("""{"\ud800":2,"revision":1}""")]
    [InlineData("""{"revision":1,"createdAt":"\ud800"}""")]
    [InlineData("[]")]
    [InlineData("")]
    public void TakeFrom_BodyThatCannotBeRead_ChangesNothing(string sent)
    {
        var body = Encoding.UTF8.GetBytes(sent);

        Assert.Empty(ReadOnlyMembersAttribute.TakeFrom(typeof(Some), body));
        Assert.Equal(sent, Encoding.UTF8.GetString(body));
    }

    [ReadOnlyMembers("revision", "createdAt")]
    private sealed class Some;
}
