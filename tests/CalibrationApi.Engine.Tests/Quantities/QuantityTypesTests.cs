using System.Reflection;
using CalibrationApi.Engine.Quantities;

namespace CalibrationApi.Engine.Tests.Quantities;

/// <summary>What every quantity type promises, found by reflection so that a new one is checked too.</summary>
public sealed class QuantityTypesTests
{
    private static readonly Type[] Types =
    [
        .. typeof(IQuantity).Assembly.GetTypes().Where(type => type.IsValueType && typeof(IQuantity).IsAssignableFrom(type)),
    ];

    public static TheoryData<string> Names => [.. Types.Select(type => type.Name)];

    [Fact]
    public void Assembly_QuantityTypes_AreFound()
    {
        Assert.True(Types.Length >= 10, $"Only {Types.Length} quantity types were found.");
        Assert.Contains(typeof(Mass), Types);
        Assert.Contains(typeof(MassPerRevolution), Types);
    }

    [Fact]
    public void Of_AllTypes_MeasureDifferentDimensions() => Assert.Distinct(Types.Select(DimensionOf));

    [Theory]
    [MemberData(nameof(Names))]
    public void FromCanonical_FiniteValue_KeepsItToTheLastBit(string name)
    {
        foreach (var value in (double[])[0, 1.0 / 3, -17.08, 5e-324, double.MaxValue])
        {
            var quantity = Make(Find(name), value);

            Assert.Equal(value, quantity.Canonical);
            Assert.Equal(DimensionOf(Find(name)), quantity.Dimension);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void FromCanonical_ValueThatIsNotFinite_IsRefused(string name)
    {
        foreach (var value in (double[])[double.NaN, double.PositiveInfinity, double.NegativeInfinity])
            Assert.Throws<ArgumentOutOfRangeException>(() => Make(Find(name), value));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Constructor_ValueThatIsNotFinite_IsRefused(string name)
    {
        var constructor = Find(name).GetConstructor([typeof(double)]);

        Assert.NotNull(constructor);
        var thrown = Assert.Throws<TargetInvocationException>(() => constructor.Invoke([double.NaN]));
        Assert.IsType<ArgumentOutOfRangeException>(thrown.InnerException);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Equality_SameValue_IsEqual(string name)
    {
        var type = Find(name);

        Assert.Equal(Make(type, 17.08), Make(type, 17.08));
        Assert.NotEqual(Make(type, 17.08), Make(type, 17.081));
    }

    private static Type Find(string name) => Types.Single(type => type.Name == name);

    private static Dimension DimensionOf(Type type) =>
        (Dimension)type.GetProperty("Of", BindingFlags.Public | BindingFlags.Static)!.GetValue(null)!;

    private static IQuantity Make(Type type, double value) =>
        (IQuantity)
            type.GetMethod("FromCanonical", BindingFlags.Public | BindingFlags.Static)!
                .Invoke(null, BindingFlags.DoNotWrapExceptions, null, [value], null)!;
}
