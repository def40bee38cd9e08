using System.Text.RegularExpressions;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Tests.Plumbing.Http;

public sealed class KeyTextTests
{
    private const string Id = "019d0000-000b-7000-8000-000000000001";

    [Fact]
    public void Read_WhatWasMade_GivesIdAndHash()
    {
        var (text, made) = KeyText.Make(Id);

        var read = KeyText.Read(text)!;

        Assert.Equal(Id, read.Id);
        Assert.True(read.Fits(made.SecretHash));
        Assert.Matches(KeyText.Pattern, text);
        Assert.StartsWith(KeyText.Start(Id) + "_", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Make_Twice_GivesDifferentSecrets()
    {
        var (one, first) = KeyText.Make(Id);
        var (other, second) = KeyText.Make(Id);

        Assert.NotEqual(one, other);
        Assert.False(first.Fits(second.SecretHash));
    }

    [Fact]
    public void Read_CutAtAnyPlace_IsNoKey()
    {
        var (text, _) = KeyText.Make(Id);

        Assert.All(Enumerable.Range(0, text.Length), length => Assert.Null(KeyText.Read(text[..length])));
        Assert.Null(KeyText.Read(text + "a"));
        Assert.Null(KeyText.Read(" " + text));
    }

    [Fact]
    public void Read_AnyLetterChanged_IsNoKey()
    {
        var (text, _) = KeyText.Make(Id);

        for (var i = 0; i < text.Length; i++)
        {
            foreach (var letter in "a7Z1_-é")
            {
                if (letter != text[i])
                    Assert.Null(KeyText.Read(text[..i] + letter + text[(i + 1)..]));
            }
        }
    }

    [Fact]
    public void Read_TwoNeighboursSwapped_IsNoKey()
    {
        var (text, _) = KeyText.Make(Id);

        foreach (var i in Enumerable.Range(0, text.Length - 1).Where(i => text[i] != text[i + 1]))
            Assert.Null(KeyText.Read(text[..i] + text[i + 1] + text[i] + text[(i + 2)..]));
    }

    // Vectors of RFC 4648 section 10 ("foobar" and its beginnings), in lower case: the first bytes of a made-up id show in the text.
    [Theory]
    [InlineData("666f6f62-6172-0000-0000-000000000000", "mzxw6ytboi")]
    [InlineData("666f6f62-6100-0000-0000-000000000000", "mzxw6ytb")]
    public void Start_OfAnId_IsBase32(string id, string begins)
    {
        var start = KeyText.Start(id)[KeyText.Prefix.Length..];

        Assert.StartsWith(begins[..^1], start, StringComparison.Ordinal);
        Assert.Equal(26, start.Length);
        Assert.Matches(new Regex("^[a-z2-7]+$"), start);
    }
}
