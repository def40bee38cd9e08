using System.Text;
using CalibrationApi.Plumbing.Bodies;

namespace CalibrationApi.Tests.Plumbing.Bodies;

/// <summary>
/// What a body says, whichever way it is written (RFC 8785, 3.2, for white space, numbers, strings and the order of members).
/// </summary>
public sealed class BodyMeaningTests
{
    [Theory]
    [InlineData("""{"a":1,"b":"x"}""", """ { "b" : "x",  "a" : 1.0 } """)]
    [InlineData("""{"a":[1,{"b":2,"c":3}]}""", """{"a":[1e0,{"c":3,"b":2}],"d":null}""")]
    [InlineData("""{"a":"é/"}""", """{"a":"\u00e9\/"}""")]
    [InlineData("""{"a":0}""", """{"a":-0.0}""")]
    public void Fingerprint_SameMeaning_IsTheSame(string one, string other) => Assert.Equal(Of(one), Of(other));

    [Theory]
    [InlineData("""{"a":1}""", """{"a":"1"}""")]
    [InlineData("""{"a":1}""", """{"a":1.0000000000000002}""")]
    [InlineData("""{"a":[1,2]}""", """{"a":[2,1]}""")]
    [InlineData("""{"a":"x"}""", """{"a":"x "}""")]
    [InlineData("""{"a":false}""", """{}""")]
    [InlineData("""{"a":{"b":1}}""", """{"a":{},"b":1}""")]
    public void Fingerprint_OtherMeaning_IsAnother(string one, string other) => Assert.NotEqual(Of(one), Of(other));

    private static string Of(string body) => BodyMeaning.Fingerprint(Encoding.UTF8.GetBytes(body));
}
