using System.Reflection;

namespace CalibrationApi.Clients.Tests;

/// <summary>Quantities are made by typed words for exactly the units of the contract.</summary>
public sealed class QuantitiesTests(Season season) : IClassFixture<Season>
{
    private static readonly Type[] Quantities =
    [
        .. typeof(CalibrationClient)
            .Assembly.GetExportedTypes()
            .Where(type => type.Name.EndsWith("Quantity", StringComparison.Ordinal) && UnitOf(type) is { IsEnum: true }),
    ];

    public static TheoryData<string> Names => [.. Quantities.Select(type => type.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Makers_OfAQuantity_AreOneForEachUnitOfTheContract(string name)
    {
        var quantity = Quantities.Single(type => type.Name == name);

        var made = MakersOf(quantity).Select(maker => maker.Invoke(null, [1.0])!.ToString()!.Split(' ')[1]);

        Assert.Equal(ContractSchema.Words(name, "unit"), made);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void ToString_OfAQuantity_IsItsNumberAndItsUnit(string name)
    {
        var maker = MakersOf(Quantities.Single(type => type.Name == name))[0];

        Assert.Equal($"18.7 {ContractSchema.Words(name, "unit").First()}", maker.Invoke(null, [18.7])!.ToString());
    }

    [Fact]
    public void TypedNumber_OfAnyUnitThatItShares_KeepsNumberAndUnit()
    {
        var known = ContractSchema.Words("TypedNumber", "unit").ToHashSet();
        var conversions = typeof(TypedNumber)
            .GetMethods()
            .Where(method =>
                method.Name == "op_Implicit" && method.GetParameters()[0].ParameterType.Name.EndsWith("Quantity", StringComparison.Ordinal)
            )
            .ToArray();
        var quantities = conversions
            .Select(conversion => (conversion, quantity: conversion.GetParameters()[0].ParameterType))
            .SelectMany(pair => MakersOf(pair.quantity).Select(maker => (pair.conversion, quantity: maker.Invoke(null, [7.07])!)))
            .ToArray();

        Assert.Equal(3, conversions.Length);
        Assert.All(quantities, pair => Assert.Contains(pair.quantity.ToString()!.Split(' ')[1], known));
        Assert.All(quantities, pair => Assert.Equal(pair.quantity.ToString(), pair.conversion.Invoke(null, [pair.quantity])!.ToString()));
    }

    [Fact]
    public void TypedNumber_OfAnEntryWithANewerUnit_IsNotMadeWithoutIt()
    {
        var entry = new EntryAnswer { Value = 7.07, Unit = "stone" };

        Assert.Throws<NotSupportedException>(() => (TypedNumber?)entry);
    }

    [Fact]
    public void Reference_OfAMassPerRevolution_KeepsNumberAndUnit()
    {
        ReferenceOfTest? reference = MassPerRevolution.PoundsPerRevolution(0.75);

        Assert.Equal("0.75 lb/rev", reference!.ToString());
    }

    [Fact]
    public async Task Units_OfTheService_AreThoseOfTheClient()
    {
        using var client = season.Connect();

        var served = (await client.GetUnitsAsync()).Select(unit => unit.Symbol).ToHashSet();

        var made = Quantities.SelectMany(MakersOf).Select(maker => maker.Invoke(null, [1.0])!.ToString()!.Split(' ')[1]);
        Assert.All(made, unit => Assert.Contains(unit, served));
    }

    [Fact]
    public async Task In_EveryUnitOfTheSameDimension_IsByTheFactorsOfTheService()
    {
        using var client = season.Connect();
        var served = await client.GetUnitsAsync();
        var pairs = served.SelectMany(from => served.Where(to => to.Dimension == from.Dimension).Select(to => (from, to))).ToArray();

        Assert.True(pairs.Length > 200);
        Assert.All(pairs, pair =>
        {
            var (from, to) = pair;
            var expected = (7.3 * Factor(from) + (from.OffsetInSi ?? 0) - (to.OffsetInSi ?? 0)) / Factor(to);

            Assert.Equal(expected, new AnyQuantity { Value = 7.3, Unit = from.Symbol }.In(to.Symbol!), Math.Abs(expected) * 1e-12);
        });

        static double Factor(UnitAnswer unit) => (double)unit.ToSi!.Numerator!.Value / unit.ToSi.Denominator!.Value;
    }

    // 1 lb is 0.45359237 kg exactly (NIST Special Publication 811, appendix B.8, as the engine's table cites it).
    [Fact]
    public void In_UnitsOfDailyWork_AreAsPeopleKnowThem()
    {
        Assert.Equal(1 / 0.45359237, Mass.Kilograms(1).In("lb"), 1e-15);
        Assert.Equal(68, MassPerArea.KilogramsPerHectare(68).In("kg/ha"));
        Assert.Equal(212, Temperature.DegreesCelsius(100).In("degF"), 1e-12);
        Assert.Equal(100, Temperature.DegreesFahrenheit(212).In("degC"), 1e-12);
    }

    [Theory]
    [InlineData("m")]
    [InlineData("stone")]
    [InlineData("")]
    public void In_AUnitOfSomethingElse_IsRefusedWithThoseThatFit(string unit)
    {
        var refused = Assert.Throws<ArgumentException>(() => Mass.Kilograms(1).In(unit));

        Assert.Contains("kg, g, t, lb, oz", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Verdicts_OfTheClient_AreThoseOfTheContract()
    {
        var constants = typeof(Verdicts).GetFields().Select(field => (string)field.GetValue(null)!);

        Assert.Equal(ContractSchema.QueryWords("/v1/history", "verdict"), constants);
    }

    private static Type? UnitOf(Type quantity) =>
        quantity.GetProperty("Unit") is { } unit ? Nullable.GetUnderlyingType(unit.PropertyType) : null;

    private static MethodInfo[] MakersOf(Type quantity) =>
        [
            .. typeof(Mass)
                .Assembly.GetExportedTypes()
                .Where(type => type is { IsAbstract: true, IsSealed: true })
                .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
                .Where(method =>
                    method.ReturnType == quantity && method.GetParameters() is [{ ParameterType: var only }] && only == typeof(double)
                ),
        ];
}
