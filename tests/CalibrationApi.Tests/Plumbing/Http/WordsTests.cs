using System.Reflection;
using CalibrationApi.Engine.CatchTests;
using CalibrationApi.Engine.Quantities;
using CalibrationApi.Plumbing.Http;

namespace CalibrationApi.Tests.Plumbing.Http;

public sealed class WordsTests
{
    // Words are looked up by position.
    [Fact]
    public void Enumerations_Each_CountFromZero()
    {
        var enumerations = new[] { typeof(Program).Assembly, typeof(UnitTable).Assembly }
            .SelectMany(assembly => assembly.GetTypes())
            .Where(type => type.IsEnum)
            .ToArray();

        Assert.True(enumerations.Length > 20);
        Assert.All(enumerations, type =>
            Assert.Equal(
                Enumerable.Range(0, Enum.GetNames(type).Length),
                Enum.GetNames(type)
                    .Select(name => (int)type.GetField(name, BindingFlags.Public | BindingFlags.Static)!.GetRawConstantValue()!)
            )
        );
    }

    [Fact]
    public void Read_EveryWord_GivesTheValueThatItIsWrittenFor()
    {
        Assert.Equal(["investigate", "repeat", "keep", "adopt"], Words.All<Verdict>());
        Assert.All(Enum.GetValues<Verdict>(), verdict => Assert.Equal(verdict, Words.Read<Verdict>(Words.Of(verdict))));
    }

    [Fact]
    public void Read_WithoutAWord_GivesTheFallback()
    {
        Assert.Equal(Verdict.Keep, Words.Read(null, Verdict.Keep));
        Assert.Null(Words.Read<Verdict>(null));
    }
}
