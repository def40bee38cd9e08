using System.Reflection;
using System.Text.RegularExpressions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Engine.LikelyMistakes;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Reference.Codes;

namespace CalibrationApi.Architecture.Tests;

/// <summary>A code has one home, where its cause and its remedy stand; it is used, and written nowhere else.</summary>
public sealed partial class CodesTests
{
    private static readonly Type[] Homes =
    [
        typeof(ErrorCode),
        typeof(RefusalCode),
        typeof(FindingCode),
        typeof(CautionCode),
        typeof(MistakeCode),
    ];

    private static readonly SourceFile[] Others =
    [
        .. SourceFile.In("src").Where(file => Homes.All(home => file.Name.Split('.')[0] != home.Name)),
    ];

    [Fact]
    public void Codes_Each_AreListedWithCauseAndRemedy()
    {
        var listed = CodeList.All.ToDictionary(code => code.Code);

        Assert.True(listed.Count > 80);
        Assert.Equal(
            Constants().Select(code => code.Value).Distinct().Order(StringComparer.Ordinal),
            listed.Keys.Order(StringComparer.Ordinal)
        );
        Assert.All(listed.Values, code =>
        {
            Assert.True(code.Cause.EndsWith('.'), $"{code.Code} needs a <summary> that says in a sentence what it comes from.");
            Assert.True(code.Remedy.EndsWith('.'), $"{code.Code} needs a [Remedy] that says in sentences what to do.");
            Assert.Matches(Kebab(), code.Code);
            Assert.True(code.Kind is not ("error" or "refusal") || code.Statuses?.Count > 0, $"{code.Code} needs its [Statuses].");
            Assert.True(code.Kind != "finding" || code.Severities?.Count > 0, $"{code.Code} needs its [Severities].");
        });
    }

    [Fact]
    public void Codes_Each_AreUsed()
    {
        // A constant that only repeats another one's code has its use there.
        var unused = Constants()
            .Where(code => !Others.Any(file => Regex.IsMatch(file.Text, $@"(?<!cref="")\b{code.Home.Name}\.{code.Name}\b")))
            .Where(code => !Constants().Any(other => other != code && other.Value == code.Value));

        Assert.Empty(unused.Select(code => $"{code.Home.Name}.{code.Name} is used nowhere. Delete it, or keep the promise that it makes."));
    }

    [Fact]
    public void Codes_None_IsWrittenAsText()
    {
        var written = Others.SelectMany(file =>
            Constants()
                .Where(code => file.Text.Contains($"\"{code.Value}\"", StringComparison.Ordinal))
                .Select(code => $"{file.Shown} writes \"{code.Value}\". Use {code.Home.Name}.{code.Name}.")
        );

        Assert.Empty(written);
    }

    [Fact]
    public void CodesOfAnswers_None_IsMadeUpOnTheWay()
    {
        // Whatever carries a code takes it from a home: no text in its place.
        var made = Others.SelectMany(file => MadeUp().Matches(file.Text).Select(match => $"{file.Shown}: {match.Value}"));

        Assert.Empty(made);
    }

    [Fact]
    public void Severities_OfEachFinding_AreThoseItIsMadeWith()
    {
        var made = Others
            .SelectMany(file => Finding().Matches(file.Text))
            .GroupBy(match => match.Groups["code"].Value, match => match.Groups["severity"].Value)
            .ToDictionary(group => group.Key, group => group.Distinct().Order().ToArray());

        Assert.NotEmpty(made);
        Assert.All(Constants().Where(code => code.Home == typeof(FindingCode)), code =>
            Assert.Equal(
                made[code.Name],
                code.Field.GetCustomAttribute<SeveritiesAttribute>()!.All.Select(severity => severity.ToString()).Order()
            )
        );
    }

    private static IEnumerable<(Type Home, string Name, string Value, FieldInfo Field)> Constants() =>
        Homes.SelectMany(home =>
            home.GetFields(BindingFlags.Public | BindingFlags.Static)
                .Select(field => (home, field.Name, (string)field.GetRawConstantValue()!, field))
        );

    [GeneratedRegex("^[a-z]+(-[a-z]+)*$")]
    private static partial Regex Kebab();

    [GeneratedRegex(@"Finding\.(?<severity>Note|Warning|Stop)\(\s*FindingCode\.(?<code>\w+)")]
    private static partial Regex Finding();

    [GeneratedRegex(
        """(?<![\w.])Code = "[^"]*"|ErrorCode = "|new (Refusal|Finding|Caution)\("|Finding\.(Note|Warning|Stop)\(\s*"|WithErrorCode\(\s*"|ProblemResult\.Of\([^,]+,\s*"|\.Report\([^,]*,\s*"(?!")[a-z-]+","""
    )]
    private static partial Regex MadeUp();
}
