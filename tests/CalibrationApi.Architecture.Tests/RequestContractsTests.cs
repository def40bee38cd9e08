using System.Reflection;
using CalibrationApi.Calculations;
using CalibrationApi.Http;
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
            .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .SelectMany(method => method.GetParameters())
            .Select(parameter => parameter.ParameterType)
            .Where(type => type.IsGenericType && type.GetGenericTypeDefinition() == typeof(JsonBody<>) && !type.ContainsGenericParameters)
            .Select(type => type.GenericTypeArguments[0])
            .Where(type => !type.IsGenericParameter)
            .Concat(CalculationList.All.Select(calculation => calculation.RequestType))
            .Distinct()
            .OrderBy(type => type.Name, StringComparer.Ordinal),
    ];

    [Fact]
    public void Bodies_Each_HaveOneValidator()
    {
        Assert.True(Bodies.Length >= 3);
        Assert.All(Bodies, body => Assert.Single(HostTypes, type => !type.IsAbstract && type.IsAssignableTo(typeof(IValidator<>).MakeGenericType(body))));
    }

    [Fact]
    public void Bodies_Each_AreCheckedByTheRunningService()
    {
        Assert.True(Bodies.Length >= 3);
        Assert.All(Bodies, body => Assert.Single(host.Services.GetServices(typeof(IValidator<>).MakeGenericType(body))));
    }

    // Whatever stops looking at a request that is wrong in a hundred places has to be in each of its parts.
    [Fact]
    public void Validators_Each_AreRequestValidators()
    {
        var validators = HostTypes.Where(type => !type.IsAbstract && type.IsAssignableTo(typeof(IValidator))).ToArray();

        Assert.True(validators.Length > 50);
        Assert.All(validators, type => Assert.Contains(Ancestors(type), one => one.IsGenericType && one.GetGenericTypeDefinition() == typeof(RequestValidator<>)));
    }

    private static IEnumerable<Type> Ancestors(Type type)
    {
        for (var one = type.BaseType; one is not null; one = one.BaseType)
            yield return one;
    }

    // A request member that is not nullable would read as zero or empty when it is missing.
    [Fact]
    public void Bodies_TheirMembers_CanAllBeAbsent()
    {
        var nullability = new NullabilityInfoContext();
        var members = Bodies.SelectMany(Contracts).Distinct().SelectMany(type => type.GetProperties()).ToArray();

        Assert.True(members.Length > 50);
        Assert.Empty(members
            .Where(member => nullability.Create(member).ReadState == NullabilityState.NotNull)
            .Select(member => $"{member.DeclaringType!.Name}.{member.Name}")
            .Distinct());
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
