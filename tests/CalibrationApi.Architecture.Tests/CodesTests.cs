using System.Reflection;
using System.Text.RegularExpressions;
using CalibrationApi.Engine.Answers;
using CalibrationApi.Plumbing.Contract;
using CalibrationApi.Plumbing.Http;
using CalibrationApi.Reference.Codes;

namespace CalibrationApi.Architecture.Tests;

/// <summary>A code is declared once, in a class of codes, where its cause and its remedy stand; and it is used.</summary>
/// <remarks>That a finding comes with no other severity than its code allows is held by the compiler.</remarks>
public sealed partial class CodesTests
{
    private static readonly (PropertyInfo Place, Code Code)[] Declared = [.. CodesOf.Service()];

    private static readonly (MethodBase Method, MemberInfo[] Uses)[] Methods =
    [
        .. new[] { typeof(Code).Assembly, typeof(ErrorCode).Assembly }
            .SelectMany(assembly => assembly.GetTypes())
            .SelectMany(Instructions.MethodsOf)
            .Select(method => (method, Instructions.UsedBy(method).ToArray())),
    ];

    [Fact]
    public void Codes_Each_AreListedWithCauseAndRemedy()
    {
        Assert.True(Declared.Length > 150);
        Assert.Equal(Words(Declared.Select(one => one.Code.Word)), Words(CodeList.All.Select(code => code.Code)));
        Assert.All(CodeList.All, code =>
        {
            Assert.True(code.Cause.EndsWith('.'), $"{code.Code} needs a <summary> that says in a sentence what it comes from.");
            Assert.True(code.Remedy.EndsWith('.') || code.Remedy.EndsWith('?'), $"{code.Code} has to say in sentences what to do.");
            Assert.Matches(Kebab(), code.Code);
            Assert.True(code.Kind is not ("error" or "refusal") || code.Statuses?.Count > 0, $"{code.Code} needs its statuses.");
            Assert.True(code.Kind != "finding" || code.Severities?.Count > 0, $"{code.Code} needs its severities.");
        });
    }

    [Fact]
    public void Codes_Each_AreDeclaredOnce() => Assert.Distinct(Declared.Select(one => one.Code.Word));

    [Fact]
    public void Codes_None_IsMadeOutsideAClassOfCodes()
    {
        var homes = Declared.Select(one => one.Place.DeclaringType).ToHashSet();
        var made = Methods.Where(method =>
            !homes.Contains(method.Method.DeclaringType)
            && method.Method.DeclaringType != typeof(ErrorCode)
            && method.Uses.OfType<ConstructorInfo>().Any(used => used.DeclaringType!.IsAssignableTo(typeof(Code)))
            && !method.Method.DeclaringType!.IsAssignableTo(typeof(Code))
        );

        Assert.Empty(made.Select(method => $"{method.Method.DeclaringType}.{method.Method.Name} makes a code up on the way."));
    }

    [Fact]
    public void Codes_Each_AreUsed()
    {
        var used = Methods
            .Where(method => Declared.All(one => one.Place.DeclaringType != method.Method.DeclaringType))
            .SelectMany(method => method.Uses)
            .ToHashSet();

        Assert.Empty(
            Declared
                .Where(one => !used.Contains(one.Place.GetMethod!))
                .Select(one =>
                    $"{one.Place.DeclaringType!.Name}.{one.Place.Name} is used nowhere. Delete it, or keep the promise that it makes."
                )
        );
    }

    private static string[] Words(IEnumerable<string> words) => [.. words.Order(StringComparer.Ordinal)];

    [GeneratedRegex("^[a-z]+(-[a-z]+)*$")]
    private static partial Regex Kebab();
}
