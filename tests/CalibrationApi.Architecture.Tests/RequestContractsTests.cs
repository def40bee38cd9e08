using System.Reflection;
using CalibrationApi.Plumbing.Bodies;
using CalibrationApi.Plumbing.Members;
using CalibrationApi.Plumbing.Quantities;
using CalibrationApi.Plumbing.Validation;
using FluentValidation;
using Microsoft.Extensions.DependencyInjection;

namespace CalibrationApi.Architecture.Tests;

/// <summary>No body comes in unchecked.</summary>
public sealed class RequestContractsTests(RunningHost host) : IClassFixture<RunningHost>
{
    private static readonly Type[] HostTypes = typeof(Program).Assembly.GetTypes();

    private static readonly Type[] Bodies =
    [
        .. HostTypes
            .SelectMany(type =>
                type.GetMethods(
                    BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly
                )
            )
            .SelectMany(method => method.GetParameters())
            .Select(parameter => parameter.ParameterType)
            .Where(type => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(JsonBody<>) && !type.ContainsGenericParameters)
            .Select(type => type.GenericTypeArguments[0])
            .Where(type => !type.IsGenericParameter)
            .Concat(CalculationList.All.Select(calculation => calculation.RequestType))
            .Distinct()
            .OrderBy(type => type.Name, StringComparer.Ordinal),
    ];

    // What is not said on a member is neither checked nor told.
    [Fact]
    public void Bodies_TheirMembers_CarryWhatMayBeSent()
    {
        var members = Bodies
            .SelectMany(Contracts)
            .Distinct()
            .SelectMany(type => type.GetProperties())
            .Where(member => member.DeclaringType != typeof(Quantity))
            .ToArray();

        Assert.True(members.Length > 300);
        Assert.Empty(
            members
                .Where(member => RuleFor(member.PropertyType) is { } rule && !member.IsDefined(rule))
                .Select(member => $"{member.DeclaringType!.Name}.{member.Name}")
                .Distinct()
        );
        Assert.Empty(
            members
                .Where(member => IsList(member) && !member.IsDefined(typeof(ItemsAttribute)))
                .Select(member => $"{member.DeclaringType!.Name}.{member.Name}")
                .Distinct()
        );
        Assert.Empty(Bodies.SelectMany(RequestPlan.Undescribed));
    }

    [Fact]
    public void Bodies_Each_AreCheckedByTheRunningService()
    {
        Assert.True(Bodies.Length >= 3);
        Assert.All(Bodies, body =>
            Assert.IsType(
                typeof(RequestValidator<>).MakeGenericType(body),
                Assert.Single(host.Services.GetServices(typeof(IValidator<>).MakeGenericType(body)))
            )
        );
    }

    // A validator that no type names would never run.
    [Fact]
    public void Validators_Each_AreNamedByTheTypeThatTheyCheck()
    {
        var validators = HostTypes
            .Where(type => !type.IsAbstract && type.IsAssignableTo(typeof(IValidator)) && type != typeof(RequestValidator<>))
            .ToArray();
        var named = HostTypes
            .Select(type => (Type: type, Named: type.GetCustomAttribute<CheckedByAttribute>(inherit: false)?.Validator))
            .Where(one => one.Named is not null)
            .ToDictionary(one => one.Named!, one => one.Type);

        Assert.True(validators.Length > 20);
        Assert.Equal(validators.Select(type => type.Name).Order(), named.Keys.Select(type => type.Name).Order());
        Assert.All(named, one => Assert.Equal(typeof(AbstractValidator<>).MakeGenericType(one.Value), one.Key.BaseType));
    }

    private static bool IsList(PropertyInfo member) =>
        member.PropertyType.IsGenericType && member.PropertyType.GetGenericTypeDefinition() == typeof(IReadOnlyList<>);

    // The rule that a number, a quantity or a text needs, also as an item of a list; nothing is needed for what has members of its own.
    private static Type? RuleFor(Type type) =>
        type switch
        {
            _ when type == typeof(double?) || type == typeof(int?) => typeof(NumberAttribute),
            _ when type == typeof(string) => typeof(TextRuleAttribute),
            _ when type.IsAssignableTo(typeof(Quantity)) => typeof(MeasuredAttribute),
            { IsGenericType: true } when type.GetGenericTypeDefinition() == typeof(IReadOnlyList<>) => RuleFor(
                type.GenericTypeArguments[0]
            ),
            _ => null,
        };

    // A request member that is not nullable would read as zero or empty when it is missing.
    [Fact]
    public void Bodies_TheirMembers_CanAllBeAbsent()
    {
        var nullability = new NullabilityInfoContext();
        var members = Bodies.SelectMany(Contracts).Distinct().SelectMany(type => type.GetProperties()).ToArray();

        Assert.True(members.Length > 50);
        Assert.Empty(
            members
                .Where(member => nullability.Create(member).ReadState == NullabilityState.NotNull)
                .Select(member => $"{member.DeclaringType!.Name}.{member.Name}")
                .Distinct()
        );
    }

    // A contract type and every type of ours that its members hold.
    private static IEnumerable<Type> Contracts(Type root)
    {
        var seen = new HashSet<Type>();
        var waiting = new Stack<Type>([root]);
        while (waiting.TryPop(out var type))
        {
            if (!seen.Add(type))
                continue;
            foreach (var member in type.GetProperties())
            {
                var held = member.PropertyType.IsGenericType ? member.PropertyType.GenericTypeArguments[0] : member.PropertyType;
                if (held.Assembly == typeof(Program).Assembly)
                    waiting.Push(held);
            }
        }

        return seen;
    }
}
